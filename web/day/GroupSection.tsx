import { useState } from 'react';
import { Link } from 'wouter';
import { startOf } from '#contract/day/startOf.ts';
import { unbroken } from '#contract/paper/effortWords.ts';
import { groupSummary } from '#contract/paper/groupSummary.ts';
import type { Day, Group, Place } from '#contract/records/day.ts';
import { startText } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useNewest } from '#web/parts/useNewest.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { AddLifter } from './AddLifter.tsx';
import { WhoIsHere } from './here/WhoIsHere.tsx';
import { comesTo } from './here/whoIsHere.ts';
import { lifterName } from './lifterName.ts';
import type { Drop } from './MoveHandle.tsx';
import { clearRack, movePlace, onRack } from './movePlace.ts';
import { OnlyLabel } from './OnlyLabel.tsx';
import { GroupPlan } from './onDemand.tsx';
import { RackTable } from './RackTable.tsx';
import { forgetTried, triedKey } from './tried.ts';
import { useLines } from './useLines.ts';
import type { Solving } from './useSolving.ts';

/** One group of the day: its work in a line, to open and change, and a table for each rack in lifting order. */
export function GroupSection(props: {
  day: Day;
  group: Group;
  solving: Solving;
  onChange: (group: Group) => void;
  onRemove: () => void;
}) {
  const { day, group, solving, onChange } = props;
  const lines = useLines(solving.prescription, group.id);
  const records = useClub();
  const units = useUnits();
  const say = useToast();
  const [open, setOpen] = useState(group.places.length === 0);
  const [whoOpen, setWhoOpen] = useState(false);
  const racks = records.rack.filter((rack) => rack.lifts.includes(group.lift));
  const rackIds = racks.map((rack) => rack.id);
  const free = records.lifter.filter(
    (lifter) => lifter.leftOn === null && !group.places.some((place) => place.lifterId === lifter.id),
  );

  const setPlaces = (places: Place[]) => onChange({ ...group, places });
  // An undo comes later than the tap: it puts one lifter back into the group as it is then.
  const newest = useNewest({ places: group.places, setPlaces });
  const nameOf = (id: string) => lifterName(records.lifter, id);
  const move = (lifterId: string, drop: Drop) => {
    const before = group.places.find((place) => place.lifterId === lifterId);
    const order = onRack(group.places, before?.rackId ?? '').findIndex(
      (place) => place.lifterId === lifterId,
    );
    setPlaces(movePlace(group.places, lifterId, drop.rackId, drop.order));
    if (before === undefined || before.rackId === drop.rackId) return;
    // What was tried hung on the rack where it was tried.
    forgetTried(triedKey(day.id, group.id, lifterId));
    const rack = racks.find(({ id }) => id === drop.rackId)?.label ?? 'another rack';
    say(`${nameOf(lifterId)} lifts at ${rack} now.`, () => {
      const now = newest.current;
      now.setPlaces(movePlace(now.places, lifterId, before.rackId, order));
    });
  };
  const changePlace = (next: Place) => {
    const before = group.places.find((place) => place.lifterId === next.lifterId);
    setPlaces(put(group.places, next));
    if (before === undefined || startWords(before) === startWords(next)) return;
    say(`${nameOf(next.lifterId)}: ${startWords(next)}.`, () => {
      const now = newest.current;
      const kept = now.places.find((place) => place.lifterId === next.lifterId);
      if (kept) now.setPlaces(put(now.places, { ...kept, start: before.start }));
    });
  };
  const startWords = (place: Place) => startText(group.lift, startOf(group, place), units.length);
  const clear = (rackId: string) => {
    const before = group.places;
    const names = onRack(before, rackId).map(({ lifterId }) => nameOf(lifterId));
    setPlaces(
      clearRack(
        before,
        rackId,
        rackIds.filter((id) => id !== rackId),
      ),
    );
    say(`Sent to other racks: ${names.join(', ')}.`, () => newest.current.setPlaces(before));
  };
  const leaveOut = (place: Place, name: string) => {
    const before = group.places;
    setPlaces(group.places.filter((other) => other !== place));
    say(`${name} was taken off this group.`, () => setPlaces(before));
  };
  return (
    <section className="stack group">
      <div className="row ends base group-head">
        <h2>{group.title}</h2>
        <p className="group-summary">{unbroken(groupSummary(group, units.length))}</p>
        <div className="row screen-only">
          <button type="button" aria-expanded={whoOpen} onClick={() => setWhoOpen(!whoOpen)}>
            Who is here
          </button>
          <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? 'Close the plan' : 'Change the plan'}
          </button>
          {open && (
            <button type="button" className="plain" onClick={props.onRemove}>
              Remove the group
            </button>
          )}
        </div>
      </div>
      {open && <GroupPlan group={group} boxes={records.box} plan={lines.plan} onChange={onChange} />}
      {whoOpen && (
        <WhoIsHere
          {...{ day, group, racks, onChange }}
          planned={lines.plan?.places.map(({ lifterId }) => lifterId) ?? null}
        />
      )}
      <OnlyLabel places={group.places} />
      {lines.cautions.map((caution) => (
        <p key={caution} className="caution small">
          {caution}
        </p>
      ))}
      {racks.length === 0 && (
        <p>
          No rack of the club takes this lift: <Link href="~/gear/racks">add one, or say what it is for</Link>
          , then come back.
        </p>
      )}
      {records.lifter.length === 0 && (
        <p>
          The club has no lifters yet: <Link href="~/lifters/new">add the first one</Link>, then come back.
        </p>
      )}
      {racks.map((rack) => (
        <RackTable
          key={rack.id}
          {...{ day, group }}
          rack={rack}
          rackIds={rackIds}
          places={onRack(group.places, rack.id)}
          lines={lines}
          solving={solving}
          onMove={move}
          onChangePlace={changePlace}
          onLeaveOut={leaveOut}
          onClear={racks.length > 1 ? () => clear(rack.id) : null}
          add={
            <AddLifter
              rackLabel={rack.label}
              lifters={free}
              onAdd={(lifterId) => onChange(comesTo(group, lifterId, rack.id))}
            />
          }
        />
      ))}
    </section>
  );
}

/** The same places with this one in the place of that lifter's. */
function put(places: readonly Place[], one: Place): Place[] {
  return places.map((place) => (place.lifterId === one.lifterId ? one : place));
}

import { useState } from 'react';
import type { Day, Group } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { DayHead } from './DayHead.tsx';
import { GroupSection } from './GroupSection.tsx';
import { SolveBar } from './SolveBar.tsx';
import { startingGroup } from './startingPoints.ts';
import { useDayDraft } from './useDayDraft.ts';
import { useSolving } from './useSolving.ts';

const mostGroups = 8;

/** One training day: its groups, the loads that were worked out for it, and the way to its papers. */
export function DayPage({ kept }: { kept: Day }) {
  const draft = useDayDraft(kept);
  const solving = useSolving(draft);
  const { day, change } = draft;
  const say = useToast();

  const putGroup = (group: Group) =>
    change((now) => ({ ...now, groups: now.groups.map((g) => (g.id === group.id ? group : g)) }));
  const leaveOut = (group: Group) => {
    const before = day.groups;
    change((now) => ({ ...now, groups: now.groups.filter((g) => g.id !== group.id) }));
    say(`Removed ${group.title}.`, () => change((now) => ({ ...now, groups: before })));
  };
  return (
    <article className="stack day">
      <DayHead day={day} change={change} />
      <SolveBar draft={draft} solving={solving} />
      {day.groups.map((group) => (
        <GroupSection
          key={group.id}
          {...{ day, group }}
          solving={solving}
          onChange={putGroup}
          onRemove={() => leaveOut(group)}
        />
      ))}
      {day.groups.length < mostGroups && (
        <AddGroup onAdd={(lift) => change((now) => withGroup(now, lift))} first={day.groups.length === 0} />
      )}
      {solving.prescription && <KnownLegend />}
    </article>
  );
}

function AddGroup(props: { first: boolean; onAdd: (lift: Lift) => void }) {
  const [lift, setLift] = useState<Lift>('squat');
  return (
    <section className="stack ruled screen-only">
      {props.first && (
        <>
          <h2>Nobody trains yet</h2>
          <p>A group does one lift together: it shares a start, an aim, and the racks. Add the first one.</p>
        </>
      )}
      <div className="row">
        <SelectField label="Lift" value={lift} options={liftWords} onChange={setLift} />
        <button type="button" onClick={() => props.onAdd(lift)}>
          Add a group
        </button>
      </div>
    </section>
  );
}

function withGroup(day: Day, lift: Lift): Day {
  const taken = new Set(day.groups.map((group) => group.id));
  let number = day.groups.length + 1;
  while (taken.has(`group-${number}`)) number += 1;
  const work = day.groups[0]?.work ?? 'speed';
  return { ...day, groups: [...day.groups, startingGroup(`group-${number}`, work, lift, 0.36)] };
}

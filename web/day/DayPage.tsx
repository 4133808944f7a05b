import { useState } from 'react';
import type { Day, Group } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { groupFromWork, startingGroup, usualBoxM } from '#web/setup/startingPoints.ts';
import { DayHead } from './DayHead.tsx';
import { GroupSection } from './GroupSection.tsx';
import { SolveBar } from './SolveBar.tsx';
import { useAskBeforeLeaving } from './tried.ts';
import { useDayDraft } from './useDayDraft.ts';
import { useSolving } from './useSolving.ts';

const mostGroups = 8;

/** One training day: its groups, the loads that were worked out for it, and the way to its papers. */
export function DayPage({ kept }: { kept: Day }) {
  const draft = useDayDraft(kept);
  const solving = useSolving(draft);
  const { day, change } = draft;
  const say = useToast();
  useAskBeforeLeaving();

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
        <AddGroup onAdd={(make) => change((now) => withGroup(now, make))} first={day.groups.length === 0} />
      )}
      {solving.prescription && <KnownLegend />}
    </article>
  );
}

/** Another group: by its lift, or by work that the club keeps. */
function AddGroup(props: {
  first: boolean;
  onAdd: (make: (id: string, work: Group['work']) => Group) => void;
}) {
  const { workTemplate: kept } = useClub();
  const [from, setFrom] = useState<string>('squat');
  const works = kept.map(({ id, label }) => ({ value: id, word: label }));
  const add = () => {
    const work = kept.find(({ id }) => id === from);
    props.onAdd((id, kind) =>
      work ? groupFromWork(id, work) : startingGroup(id, kind, from as Lift, usualBoxM),
    );
  };
  return (
    <section className="stack ruled screen-only">
      {props.first && (
        <>
          <h2>Nobody is on this day yet</h2>
          <p>A group does one lift together: it shares a start, an aim, and the racks. Add the first one.</p>
        </>
      )}
      <div className="row">
        <SelectField
          label={kept.length === 0 ? 'Lift' : 'Lift, or kept work'}
          value={from}
          options={[...liftWords, ...works]}
          onChange={setFrom}
        />
        <button type="button" onClick={add}>
          Add a group
        </button>
      </div>
    </section>
  );
}

function withGroup(day: Day, make: (id: string, work: Group['work']) => Group): Day {
  const taken = new Set(day.groups.map((group) => group.id));
  let number = day.groups.length + 1;
  while (taken.has(`group-${number}`)) number += 1;
  const work = day.groups[0]?.work ?? 'speed';
  return { ...day, groups: [...day.groups, make(`group-${number}`, work)] };
}

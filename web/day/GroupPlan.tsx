import type { PlanGroup } from '#contract/day/dayPlan.ts';
import type { Group } from '#contract/records/day.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Lift } from '#contract/records/lift.ts';
import { hasHeight, liftWords } from '#contract/words/liftWords.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { BlockFields } from '#web/setup/BlockFields.tsx';
import { GroupBounds } from '#web/setup/GroupBounds.tsx';
import { StartFields } from '#web/setup/StartFields.tsx';
import { SureField } from '#web/setup/SureField.tsx';
import { startingGroup, workWords } from '#web/setup/startingPoints.ts';
import { AimFields } from './AimFields.tsx';
import { KeptWork } from './KeptWork.tsx';

/** What a group does: lift, start, aim and steps. Who lifts where stands in the tables below it. */
export function GroupPlan(props: {
  group: Group;
  boxes: readonly Box[];
  /** What was worked out for the group; null: nothing yet. */
  plan: PlanGroup | null;
  onChange: (group: Group) => void;
}) {
  const { group, boxes, plan, onChange } = props;
  const say = useToast();
  const put = (change: Partial<Group>) => onChange({ ...group, ...change });
  const beginAgain = (work: Group['work']) => {
    const fresh = startingGroup(group.id, work, group.lift, group.start.heightM);
    onChange({ ...fresh, title: group.title, start: group.start, places: group.places, away: group.away });
    say('Aim and steps were reset for this kind of work.', () => onChange(group));
  };
  // Another lift begins another way: own starts and what was fixed for the old lift go.
  const pickLift = (lift: Lift) => {
    const fresh = startingGroup(group.id, group.work, lift, group.start.heightM);
    put({ lift, start: fresh.start, places: freed(group.places), away: freed(group.away) });
    say("The lift was changed: lifters' own starts and whatever was set by hand are gone.", () =>
      onChange(group),
    );
  };
  return (
    <div className="group-plan">
      <div className="stack">
        <h3>The lift</h3>
        <div className="fields">
          <TextField label="Name of the group" value={group.title} onChange={(title) => put({ title })} />
          <SelectField label="Work" value={group.work} options={workWords} onChange={beginAgain} />
          <SelectField label="Lift" value={group.lift} options={liftWords} onChange={pickLift} />
          <StartFields
            lift={group.lift}
            start={group.start}
            boxes={boxes}
            onChange={(start) => (start.heightM !== null || !hasHeight(start.way)) && put({ start })}
          />
        </div>
        <KeptWork group={group} onChange={onChange} />
      </div>
      <div className="stack">
        <h3>What the loads aim at</h3>
        <AimFields aim={group.aim} plan={plan} onChange={(aim) => put({ aim })} />
        <SureField leastChance={group.leastChance ?? null} onChange={(leastChance) => put({ leastChance })} />
      </div>
      <div className="stack">
        <h3>Sets and reps, step by step</h3>
        <BlockFields blocks={group.blocks} onChange={(blocks) => put({ blocks })} />
        <GroupBounds aim={group.aim} bounds={group.bounds ?? null} onChange={(bounds) => put({ bounds })} />
      </div>
    </div>
  );
}

function freed(places: Group['places']): Group['places'] {
  return places.map((place) => ({ ...place, start: null, byCoach: null }));
}

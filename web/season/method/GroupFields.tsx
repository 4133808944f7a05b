import { blocksWords } from '#contract/paper/groupSummary.ts';
import { fieldOf } from '#contract/records/fields.ts';
import { type GroupAsked, groupAsked } from '#contract/records/method.ts';
import { aimOfWeekWords } from '#contract/season/methodRows.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { aimsOfWeek } from '#reckon/season/dayAim.ts';
import { textLimits } from '#web/parts/limits.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { GroupBounds } from '#web/setup/GroupBounds.tsx';
import { SureField } from '#web/setup/SureField.tsx';
import { workWords } from '#web/setup/startingPoints.ts';
import { AimInTurnFields } from './AimInTurnFields.tsx';
import { groupToBegin } from './groupToBegin.ts';
import { placeIn, useMethodFields } from './methodFields.ts';
import { StartsFields } from './StartsFields.tsx';
import { StepsInTurn } from './StepsInTurn.tsx';

/** What a group does, as the day screen asks it, but week by week: lift, starts, aim and steps. */
export function GroupFields(props: {
  at: string;
  group: GroupAsked;
  waveWeeks: number;
  onChange: (group: GroupAsked) => void;
}) {
  const { at, group, waveWeeks, onChange } = props;
  const { length } = useUnits();
  const field = useMethodFields(at);
  const put = (change: Partial<GroupAsked>) => onChange({ ...group, ...change });
  const begun = (work: GroupAsked['work'], lift: GroupAsked['lift']) => groupToBegin([], work, lift, length);
  return (
    <div className="group-plan">
      <div className="stack">
        <h3>The lift</h3>
        <div className="fields">
          <TextField
            {...field('title', 'Name of the group')}
            {...textLimits(fieldOf('title', groupAsked.shape.title))}
            value={group.title}
            onChange={(title) => put({ title })}
          />
          <SelectField
            label="Work"
            value={group.work}
            options={workWords}
            hint="Another kind of work begins with its own aim and steps."
            onChange={(work) => {
              const { aim, blocks } = begun(work, group.lift);
              put({ work, aim, blocks });
            }}
          />
          <SelectField
            label="Lift"
            value={group.lift}
            options={liftWords}
            hint="Another lift begins with its own start."
            onChange={(lift) => {
              const { variants, restWeeks } = begun(group.work, lift);
              put({ lift, variants, restWeeks });
            }}
          />
        </div>
        <StartsFields at={at} group={group} onChange={put} />
      </div>
      <div className="stack">
        <h3>What the loads aim at</h3>
        <AimInTurnFields
          at={placeIn(at, 'aim')}
          aim={group.aim}
          waveWeeks={waveWeeks}
          onChange={(aim) => put({ aim })}
        />
        <SureField leastChance={group.leastChance} onChange={(leastChance) => put({ leastChance })} />
      </div>
      <div className="stack">
        <h3>Sets and reps, step by step</h3>
        <StepsInTurn blocks={group.blocks} waveWeeks={waveWeeks} onChange={(blocks) => put({ blocks })} />
        <GroupBounds
          aim={aimsOfWeek(group.aim, { wave: 0, weekOfWave: 0 })[0]!.aim}
          bounds={group.bounds}
          onChange={(bounds) => put({ bounds })}
        />
      </div>
    </div>
  );
}

/** A group of the first week in a line. */
export function groupLine({ blocks, aim, variants }: GroupAsked): string {
  const starts = variants.length === 1 ? variants[0]!.title : `${variants.length} starts in turn`;
  return `${blocksWords(blocks[0]!)}, ${aimOfWeekWords(aim, 0)}; ${starts}`;
}

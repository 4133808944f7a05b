import type { PlanGroup } from '#contract/day/dayPlan.ts';
import type { Aim } from '#contract/records/day.ts';
import { aimWords, ofWords } from '#contract/words/aimWords.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { percent } from '#contract/words/percent.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { aimToBegin, shareByBests } from '#web/setup/firstAim.ts';

type PercentAim = Extract<Aim, { by: 'percent' }>;
type Target = PercentAim['targets'][number];

/** What the loads aim at, one of three ways; a percentage never stands without its basis. */
export function AimFields(props: {
  aim: Aim;
  /** What was worked out for the group; null: nothing yet. */
  plan: PlanGroup | null;
  onChange: (aim: Aim) => void;
}) {
  const { aim, plan, onChange } = props;
  return (
    <div className="stack tight">
      <Choice
        label="Aim at"
        showLabel
        options={aimWords}
        value={aim.by}
        onChange={(by) => by !== aim.by && onChange(aimToBegin(by, plan))}
      />
      {aim.by === 'percent' && <PercentFields aim={aim} onChange={onChange} />}
      {aim.by === 'capability' && (
        <div className="fields">
          <PercentField
            label="At the bottom"
            value={aim.bottomShare}
            min={0.1}
            max={1.2}
            onChange={(bottomShare) => onChange({ ...aim, bottomShare })}
          />
          <PercentField
            label="At lockout"
            value={aim.lockoutShare}
            min={0.1}
            max={1.2}
            onChange={(lockoutShare) => onChange({ ...aim, lockoutShare })}
          />
          <p className="field-hint wide">
            A share of what the lifter could just hold still at that height, in a straight line from bottom to
            lockout. The last 15 % of the way do not count, since far more can be held there. It starts from
            what the present plan comes to, so work out percentages first. Going by a best alone, 50 % on the
            bar and 25 % in bands come to {percent(shareByBests.bottomShare)} and{' '}
            {percent(shareByBests.lockoutShare)}: where logs are missing, less at the bottom and more at
            lockout brings more band. The same share all the way up asks for far more band than is usual.
          </p>
        </div>
      )}
      {aim.by === 'speed' && (
        <div className="fields">
          <FigureField
            label="No slower than"
            word="m/s"
            value={aim.fromMps}
            min={0.05}
            max={aim.toMps}
            onChange={(fromMps) => onChange({ ...aim, fromMps })}
          />
          <FigureField
            label="No faster than"
            word="m/s"
            value={aim.toMps}
            min={aim.fromMps}
            max={2.5}
            onChange={(toMps) => onChange({ ...aim, toMps })}
          />
          <div className="wide">
            <Choice
              label="Whose speed"
              showLabel
              options={ofWords}
              value={aim.of ?? 'firstRep'}
              onChange={(of) => onChange({ ...aim, of })}
            />
          </div>
          <p className="field-hint wide">
            Mean speed of the bar on the way up, going by this lifter's own measured speeds, or without a log
            by those of most lifters. In a whole set all reps count alike.
          </p>
        </div>
      )}
    </div>
  );
}

function PercentFields({ aim, onChange }: { aim: PercentAim; onChange: (aim: Aim) => void }) {
  const put = (targets: readonly Target[]) => onChange({ by: 'percent', targets: [...targets] });
  const free = basisWords.filter(({ value }) => !aim.targets.some((target) => target.basis === value));
  return (
    <div className="stack tight">
      {aim.targets.map((target, index) => (
        <div key={target.basis} className="fields targets">
          <PercentField
            label="Of maximum"
            value={target.share}
            min={0.05}
            max={2}
            onChange={(share) => put(aim.targets.map((t, i) => (i === index ? { ...t, share } : t)))}
          />
          <SelectField
            label="Counted on"
            value={target.basis}
            options={basisWords.filter(
              ({ value }) => value === target.basis || free.some((f) => f.value === value),
            )}
            onChange={(basis) => put(aim.targets.map((t, i) => (i === index ? { ...t, basis } : t)))}
          />
          {aim.targets.length > 1 && (
            <button
              type="button"
              className="plain"
              onClick={() => put(aim.targets.filter((_, i) => i !== index))}
            >
              Leave out
            </button>
          )}
        </div>
      ))}
      {free[0] && (
        <div>
          <button
            type="button"
            className="plain"
            onClick={() => put([...aim.targets, { basis: free[0]!.value, share: 0.7 }])}
          >
            Another percentage
          </button>
        </div>
      )}
    </div>
  );
}

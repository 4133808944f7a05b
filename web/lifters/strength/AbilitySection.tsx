import { useMemo } from 'react';
import { gravityOf } from '#contract/assemble/gravityOf.ts';
import type { Belief, StrengthEstimate } from '#contract/strengthEstimate.ts';
import { useClub } from '#web/api/useClub.ts';
import { HeldCurve } from '#web/charts/HeldCurve.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { Known } from '#web/parts/Known.tsx';
import { liftWord } from '#web/parts/liftWords.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type AskedLifter, heldCurveOf, repsOf } from './askDraws.ts';
import { LearnedTable } from './LearnedTable.tsx';

/** Heights at which the curve is worked out. */
const curvePoints = 33;
/** Shares of the maximum at which a coach counts reps. */
const workShares = [0.9, 0.8, 0.7] as const;

/** What the lifter can hold over height, how long it lasts, and what determined it. */
export function AbilitySection(props: { name: string; estimate: StrengthEstimate; lifter: AskedLifter }) {
  const { name, estimate, lifter } = props;
  const units = useUnits();
  const gravityMps2 = gravityOf(useClub());
  const curve = useMemo(() => heldCurveOf(lifter, curvePoints), [lifter]);
  return (
    <div className="stack">
      <h3>Strength over height</h3>
      <div className="strength-ability">
        <div className="stack tight">
          <MeasuredWidth>
            {(widthPx) => (
              <HeldCurve
                label={`What ${name} can hold still, ${liftWord(estimate.lift)}`}
                points={curve}
                units={chartUnits(units, gravityMps2)}
                widthPx={widthPx}
                heightPx={260}
              />
            )}
          </MeasuredWidth>
          <p className="small quiet">
            What a bar could weigh that is just held still at that height; a bar that moves takes more.
          </p>
        </div>
        <div className="stack">
          <WorkCapacity lifter={lifter} />
          <LearnedTable estimate={estimate} />
        </div>
      </div>
    </div>
  );
}

/** Reps in one set of straight weight, as a number that a coach can watch over a season. */
function WorkCapacity({ lifter }: { lifter: AskedLifter }) {
  const reps = useMemo(() => repsOf(lifter, workShares), [lifter]);
  return (
    <dl className="lifters-facts">
      {workShares.map((share, i) => (
        <div key={share}>
          <dt className="small quiet">reps at {Math.round(100 * share)} %</dt>
          <dd>
            <RepsNumber belief={reps[i]!} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

function RepsNumber({ belief }: { belief: Belief }) {
  const median = Math.round(belief.median);
  return (
    <Known
      value={`${median}`}
      unit={median === 1 ? 'rep' : 'reps'}
      known="estimated"
      interval={`${Math.round(belief.low95)} to ${Math.round(belief.high95)}`}
      why="Work capacity: reps of one rested set of straight weight before the next one would be missed, at this share of today's maximum."
      size="lead"
    />
  );
}

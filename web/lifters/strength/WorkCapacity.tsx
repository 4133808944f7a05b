import { useMemo } from 'react';
import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { percent } from '#contract/words/percent.ts';
import { Known } from '#web/parts/Known.tsx';
import { type AskedLifter, repsOf } from './askDraws.ts';

/** Shares of the maximum at which a coach counts reps. */
const workShares = [0.9, 0.8, 0.7] as const;

/** Reps in one set of straight weight, by the whole log. */
export function WorkCapacity({ lifter }: { lifter: AskedLifter }) {
  const reps = useMemo(() => repsOf(lifter, workShares), [lifter]);
  return (
    <dl className="lifters-facts">
      {workShares.map((share, i) => (
        <div key={share}>
          <dt className="small quiet">reps at {percent(share)}</dt>
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

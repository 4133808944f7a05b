import { useMemo } from 'react';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { HeldCurve } from '#web/charts/HeldCurve.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type AskedLifter, heldCurveOf } from './askDraws.ts';
import { LearnedTable } from './LearnedTable.tsx';

/** Heights at which the curve is worked out. */
const curvePoints = 33;
/** What the lifter can hold over height, and what the log has taught beside the maximum. */
export function AbilitySection(props: { name: string; estimate: StrengthEstimate; lifter: AskedLifter }) {
  const { name, estimate, lifter } = props;
  const units = useUnits();
  const gravityMps2 = gravityOf(useClub());
  const curve = useMemo(() => heldCurveOf(lifter, curvePoints), [lifter]);
  return (
    <div className="strength-ability">
      <div className="stack tight">
        <h3>Strength over height</h3>
        <MeasuredWidth>
          {(widthPx) => (
            <HeldCurve
              label={`What ${name} can hold still, ${liftWord(estimate.lift)}`}
              points={curve}
              units={chartUnits(units, gravityMps2)}
              widthPx={widthPx}
              heightPx={360}
            />
          )}
        </MeasuredWidth>
        <p className="small quiet">
          The heaviest bar that could just be held still at that height; moving one takes more strength.
        </p>
      </div>
      <div className="stack">
        <h3>Beside the maximum</h3>
        <LearnedTable estimate={estimate} />
      </div>
    </div>
  );
}

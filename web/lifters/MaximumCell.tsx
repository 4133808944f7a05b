import type { Best } from '#contract/records/lifters.ts';
import type { StrengthSummary } from '#contract/strength/strengthSummary.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { Known } from '#web/parts/Known.tsx';

/** The maximum by the whole log with its 80 % interval; until that is there, the best that was written down. */
export function MaximumCell(props: {
  estimate: StrengthSummary | undefined;
  best: Best | null;
  unit: MassUnit;
}) {
  const { estimate, best, unit } = props;
  if (estimate === undefined) return best === null ? '–' : written(best.setup.barKg, unit, 1);
  const { median, low80, high80 } = estimate.maxKg;
  const whole = (kg: number) => Math.round(fromSi(kg, unit));
  return (
    <Known
      value={`${whole(median)}`}
      unit=""
      known="estimated"
      interval={`${whole(low80)} to ${whole(high80)}`}
    />
  );
}

import type { AllowedGear } from './allowedSets.ts';
import { evenness, leastUnevenness } from './evenness.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearSums } from './gearSums.ts';
import type { Outlook } from './listSets.ts';
import { aimRows, bestBarKg, type LifterTask, misfitOf } from './misfit.ts';
import { misfitPlanes } from './misfitPlanes.ts';
import { finestStepKg } from './plates.ts';

/** What is known of the sets before they are scored, bars between the least and the most mass. */
export function setOutlook(
  task: LifterTask,
  gear: RackGear,
  { usable }: AllowedGear,
  bar: { leastKg: number; mostKg: number },
): Outlook {
  const rows = aimRows(task, finestStepKg(gear));
  const sums = gearSums(task, gear, rows);
  const missOf = (set: GearSet) => {
    const parabola = sums.parabolaOf(set);
    const worth = sums.feltSquareOf(set);
    if (task.aim.by === 'speed') {
      const spread = evenness(parabola, rows.sharePerKg, sums.meanShareOf(set), worth);
      return leastUnevenness(spread, bar.leastKg, bar.mostKg);
    }
    const barKg = Math.min(bar.mostKg, Math.max(bar.leastKg, bestBarKg(parabola)));
    return misfitOf({ ...parabola, level: parabola.level + worth }, barKg);
  };
  return { planes: misfitPlanes(task, gear, rows, sums, usable, bar), missOf };
}

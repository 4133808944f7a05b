import type { GearSet, RackGear } from './Gear.ts';
import { gearPulls } from './gearPull.ts';
import { type AimRows, type BarParabola, barParabola, type LifterTask } from './misfit.ts';

/** Adds up, for any gear set, what its pieces contribute: each piece is worked out once. */
export interface GearSums {
  parabolaOf(set: GearSet): BarParabola;
  /** Mean pull (N) of the set over the travel. */
  meanNOf(set: GearSet): number;
}

export function gearSums(task: LifterTask, gear: RackGear, rows: AimRows): GearSums {
  const pulls = gearPulls(gear, task.travel);
  const hookupRows = pulls.hookups.map(rows.gearRow);
  const chainRows = pulls.chains.map(rows.gearRow);
  const rest = new Float64Array(rows.perKg.length);
  const add = (row: readonly number[], times: number) => {
    for (let i = 0; i < rest.length; i++) rest[i]! += times * row[i]!;
  };
  return {
    parabolaOf(set) {
      rest.set(rows.empty);
      for (const index of set.hookups) add(hookupRows[index]!, 1);
      set.chainPairs.forEach((pairs, kind) => add(chainRows[kind]!, pairs));
      return barParabola(rows.perKg, rest);
    },
    meanNOf: (set) =>
      set.hookups.reduce((sum, index) => sum + pulls.hookups[index]!.meanN, 0) +
      set.chainPairs.reduce((sum, pairs, kind) => sum + pairs * pulls.chains[kind]!.meanN, 0),
  };
}

import type { Lift } from '#core/lifter/populationShape.ts';
import { estimateStrength } from '#core/strength/estimateStrength.ts';
import { STEP_LN } from '#core/strength/lattice.ts';
import { asTold } from '#core/strength/modelError.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { simulateLifter } from './simulateLifter.ts';

const lifts: readonly Lift[] = ['squat', 'bench', 'deadlift'];
const LEAST_WEEKS = 10;
const MOST_WEEKS = 26;

/** Where the truth of one simulated lifter lies in what the estimate believes of them: 0 below all of it, 1 above. */
export interface Ranks {
  lift: Lift;
  sets: number;
  effective: number;
  /** By name: `lnTotal` and every parameter that the log can tell of. */
  ranks: Record<string, number>;
}

/** Draws lifter `index` of a study from the prior, lets them train for 10 to 26 weeks, and estimates them from the log. */
export function calibrateOne(seed: number, index: number): Ranks {
  const lift = lifts[index % lifts.length]!;
  const weeks = LEAST_WEEKS + ((index * 7) % (MOST_WEEKS - LEAST_WEEKS + 1));
  const lifter = simulateLifter(seed * 1_000_003 + index, lift, weeks);
  const posterior = estimateStrength({ ...lifter, prior: populationPrior(lift) });
  const { particles, active, effective } = posterior;
  const ranks: Ranks['ranks'] = { lnTotal: 0 };
  for (const { weight, strength } of asTold(posterior)) {
    const place = lifter.truth.lnTotal / STEP_LN - strength.first + 0.5;
    const sum = strength.weights.reduce((total, w) => total + w, 0);
    strength.weights.forEach((w, i) => {
      ranks['lnTotal']! += ((weight * w) / sum) * Math.min(Math.max(place - i, 0), 1);
    });
  }
  for (const name of active) {
    const below = particles.filter(({ parameters }) => parameters[name] < lifter.truth[name]);
    ranks[name] = below.reduce((total, { weight }) => total + weight, 0);
  }
  return { lift, sets: lifter.sets.length, effective, ranks };
}

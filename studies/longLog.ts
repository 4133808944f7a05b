import type { Lift } from '#core/lifter/populationShape.ts';
import { estimateStrength, type StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { type SimulatedLifter, simulateLifter } from './simulateLifter.ts';

const known = new Map<string, SimulatedLifter>();
/** Sets that a simulated lifter logs in a week, at least. */
const SETS_A_WEEK = 8;

/** A simulated log of just so many sets; simulated once a process. */
export function longLog(seed: number, lift: Lift, sets: number): SimulatedLifter {
  const key = `${seed} ${lift} ${sets}`;
  const found = known.get(key) ?? simulateLifter(seed, lift, Math.ceil(sets / SETS_A_WEEK) + 4);
  const log = { ...found, sets: found.sets.slice(0, sets) };
  known.set(key, log);
  return log;
}

export function estimateLog(log: SimulatedLifter): StrengthPosterior {
  const onDay = log.sets[log.sets.length - 1]!.day;
  return estimateStrength({ ...log, onDay, prior: populationPrior(log.lift) });
}

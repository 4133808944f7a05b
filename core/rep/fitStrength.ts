import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { ascend } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { STRONGEST_N, strengthGuessN } from './limitGuess.ts';
import { nearThenFine } from './nearThenFine.ts';

/** Relative precision of the strength. */
const TOLERANCE = 1e-6;
/** The first step of the search, relative: about as far as its guess is off. */
const FIRST_STEP = 0.04;

/**
 * The strength (N) of a lifter for whom `load` is just a maximum, to one part in a million: `maxBar` of the same load
 * then returns its `barKg`. `capability.strengthN` is ignored. A lifter who made the load has at least this strength.
 * Throws RangeError where no strength makes the load, since it takes longer than anybody can strain.
 */
export function fitStrength(load: Load, capability: Capability): number {
  const compiled = compileLoad(load);
  const isMissed = (strengthN: number, tolerance: number) =>
    !ascend(compiled, { ...capability, strengthN }, tolerance).made;
  const guess = strengthGuessN(compiled, capability);
  const limit = nearThenFine(isMissed, {
    guess,
    step: FIRST_STEP * guess,
    tolerance: TOLERANCE * guess,
    lowest: 0,
    highest: STRONGEST_N,
  });
  if (limit === null)
    throw new RangeError('no strength makes this load: it takes longer than a lifter can strain');
  return limit.above;
}

import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { findLimit } from '../numeric/findLimit.ts';
import { ascend, COARSE, FINE } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { limitPlaces } from './limitGuess.ts';

/** Relative precision of the strength: of the coarse search, and in the end. */
const COARSE_SHARE = 2e-5;
const TOLERANCE = 1e-6;
/** A search beyond a hundred tonnes of force means that it is speed, not strength, that lacks. */
const STRONGEST_N = 1e6;

/**
 * The strength (N) of a lifter for whom `load` is just a maximum, to one part in a million: `maxBar` of the same load
 * then returns its `barKg`. `capability.strengthN` is ignored. A lifter who made the load has at least this strength.
 * Throws RangeError where no strength makes the load, since it takes longer than anybody can strain.
 */
export function fitStrength(load: Load, capability: Capability): number {
  const compiled = compileLoad(load);
  const missed = (strengthN: number, tolerance: number) =>
    !ascend(compiled, { ...capability, strengthN }, tolerance).made;
  const unit = limitPlaces(compiled, { ...capability, strengthN: 1 });
  const guess = Math.max(
    ...unit.map(({ pushN, otherN }) => (otherN + load.barKg * load.gravityMps2) / pushN),
    1,
  );
  const range = { lowest: 0, highest: STRONGEST_N };
  const near = findLimit((strengthN) => missed(strengthN, COARSE), {
    ...range,
    guess,
    step: 0.04 * guess,
    tolerance: COARSE_SHARE * guess,
  });
  const limit = findLimit((strengthN) => missed(strengthN, FINE), {
    ...range,
    guess: near?.above ?? guess,
    step: COARSE_SHARE * guess,
    tolerance: TOLERANCE * guess,
  });
  if (limit === null)
    throw new RangeError('no strength makes this load: it takes longer than a lifter can strain');
  return limit.above;
}

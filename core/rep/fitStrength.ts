import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { findRoot } from '../numeric/findRoot.ts';
import { ascend, ascentMargin } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { pushForceN } from './pushForce.ts';

/** Relative precision of the strength found. */
const TOLERANCE = 1e-7;
/** A search beyond a hundred tonnes-force means that speed, not strength, is what lacks. */
const STRONGEST_N = 1e6;

/**
 * The strength (N) of a lifter for whom `load` is just a maximum: `maxBar` of the same load then returns its
 * `barKg`. `capability.strengthN` is ignored. A maximum is a rep at its limit, so this is a least strength: the
 * lifter who made the load has at least it.
 */
export function fitStrength(load: Load, capability: Capability): number {
  const compiled = compileLoad(load);
  const margin = (strengthN: number) => {
    const lifter = { ...capability, strengthN };
    return ascentMargin(ascend(compiled, lifter), compiled, lifter);
  };
  // With less than this the bar does not leave the bottom.
  const perStrength = pushForceN({ ...capability, strengthN: 1 }, 0, load.bottomM, 0);
  const massKg = load.barKg + capability.movedBodyKg + compiled.hangingKg(load.bottomM);
  const tooWeakN = Math.max((massKg * load.gravityMps2 + compiled.bandN(load.bottomM)) / perStrength, 1);
  let weakN = tooWeakN;
  let weakMargin = margin(weakN);
  let strongN = weakN * 1.5;
  let strongMargin = margin(strongN);
  while (strongMargin <= 0) {
    if (strongN > STRONGEST_N)
      throw new RangeError('no strength makes this load: it would take longer than a lifter can strain');
    weakN = strongN;
    weakMargin = strongMargin;
    strongN *= 1.5;
    strongMargin = margin(strongN);
  }
  if (weakMargin > 0) return weakN;
  return findRoot(margin, weakN, weakMargin, strongN, strongMargin, TOLERANCE * weakN).b;
}

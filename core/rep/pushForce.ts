import type { CompiledLoad } from '../load/compileLoad.ts';
import type { Capability } from './Capability.ts';
import { heldForceFunction, strengthCurve } from './strengthCurve.ts';

/** Heights this near to lockout count as there (m): the bar comes to rest within it, and not only at its end. Assumption. */
const LANDING_M = 0.002;
/** A bar that bands from above all but carry is braked as if at least this share of its weight were there. Assumption. */
const LEAST_WEIGHT_SHARE = 0.1;

/** Time, bar height and bar speed upward (s, m, m/s >= 0) to a force (N) or an acceleration (m/s^2). */
type Along = (tS: number, zM: number, vMps: number) => number;

/**
 * What the lifter could push with everything, made ready for many instants: `S g(s) (1 - v/maxSpeed) a(t)`, with the
 * rebound fading and the decline after `strainAfterS` seconds in `a` (model, "rep").
 */
export function fullForceFunction(capability: Capability, curve = strengthCurve(capability)): Along {
  const { rebound, reboundTimeS, strainAfterS, strainTimeS, maxSpeedMps } = capability;
  const heldN = heldForceFunction(capability, curve);
  return (tS, zM, vMps) => {
    let strain = rebound === 0 ? 1 : 1 + rebound * Math.exp(-tS / reboundTimeS);
    if (tS > strainAfterS) strain *= Math.exp(-(tS - strainAfterS) / strainTimeS);
    return heldN(zM) * (1 - vMps / maxSpeedMps) * strain;
  };
}

/**
 * Acceleration of bar and moved body: what is pushed beyond the load, built up and eased as the capability says, less
 * what picking up chain takes (model, "rep").
 */
export function accelerationFunction(
  compiled: CompiledLoad,
  capability: Capability,
  curve = strengthCurve(capability),
): Along {
  const { barKg, chains, lockoutM, gravityMps2 } = compiled.load;
  const baseKg = barKg + capability.movedBodyKg;
  const hasChains = chains.length > 0;
  const { buildUpTimeS, builtShare, easing } = capability;
  const lacking = buildUpTimeS > 0 ? 1 - builtShare : 0;
  const fullN = fullForceFunction(capability, curve);
  return (tS, zM, vMps) => {
    const massKg = hasChains ? baseKg + compiled.hangingKg(zM) : baseKg;
    const pickUpN = hasChains ? compiled.liftedPerMetreKg(zM) * vMps * vMps : 0;
    const bandMps2 = compiled.bandN(zM) / massKg;
    let gain = fullN(tS, zM, vMps) / massKg - bandMps2 - gravityMps2;
    if (lacking > 0) gain *= 1 - lacking * Math.exp(-tS / buildUpTimeS);
    if (easing > 0) {
      const neededMps2 = (vMps * vMps) / (2 * (Math.max(0, lockoutM - zM) + LANDING_M));
      const brakingMps2 = Math.max(gravityMps2 + bandMps2, LEAST_WEIGHT_SHARE * gravityMps2);
      gain -= (easing * neededMps2 * neededMps2) / brakingMps2;
    }
    return gain - pickUpN / massKg;
  };
}

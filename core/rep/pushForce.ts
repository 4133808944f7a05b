import type { Capability } from './Capability.ts';
import { heldForceFunction, strengthCurve } from './strengthCurve.ts';

/**
 * The lifter's force made ready for many instants: `(t, z, v) -> S g(s) (1 - v/maxSpeed) a(t)`, with the rebound
 * fading and the decline after `strainAfterS` seconds in `a` (model, section 5). Seconds, metres, m/s >= 0; N.
 */
export function pushForceFunction(
  capability: Capability,
  curve = strengthCurve(capability),
): (tS: number, zM: number, vMps: number) => number {
  const { rebound, reboundTimeS, strainAfterS, strainTimeS, maxSpeedMps } = capability;
  const heldN = heldForceFunction(capability, curve);
  return (tS, zM, vMps) => {
    let strain = rebound === 0 ? 1 : 1 + rebound * Math.exp(-tS / reboundTimeS);
    if (tS > strainAfterS) strain *= Math.exp(-(tS - strainAfterS) / strainTimeS);
    return heldN(zM) * (1 - vMps / maxSpeedMps) * strain;
  };
}

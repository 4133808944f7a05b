import type { Capability } from './Capability.ts';
import { strengthCurve } from './strengthCurve.ts';

/**
 * The lifter's force made ready for many instants: `(t, z, v) -> S g(s) (1 - v/maxSpeed) a(t)`, with the rebound
 * fading and the decline after `strainAfterS` seconds in `a` (model, section 5). Seconds, metres, m/s >= 0; N.
 */
export function pushForceFunction(
  capability: Capability,
  curve = strengthCurve(capability),
): (tS: number, zM: number, vMps: number) => number {
  const { strengthN, rebound, reboundTimeS, strainAfterS, strainTimeS, maxSpeedMps } = capability;
  return (tS, zM, vMps) => {
    let strain = rebound === 0 ? 1 : 1 + rebound * Math.exp(-tS / reboundTimeS);
    if (tS > strainAfterS) strain *= Math.exp(-(tS - strainAfterS) / strainTimeS);
    return strengthN * curve(zM) * (1 - vMps / maxSpeedMps) * strain;
  };
}

import type { Capability } from './Capability.ts';
import { rangeShare, relativeStrength } from './strengthCurve.ts';

/** `a(t)`: the rebound bonus, fading, times the decline after `strainAfterS` seconds of straining. */
export function strainFactor(capability: Capability, tS: number): number {
  const { rebound, reboundTimeS, strainAfterS, strainTimeS } = capability;
  const bonus = rebound === 0 ? 1 : 1 + rebound * Math.exp(-tS / reboundTimeS);
  return tS > strainAfterS ? bonus * Math.exp(-(tS - strainAfterS) / strainTimeS) : bonus;
}

/** Force of the lifter (N) at time `tS`, height `zM`, speed `vMps` >= 0: `S g(s) (1 - v/maxSpeed) a(t)`. */
export function pushForceN(capability: Capability, tS: number, zM: number, vMps: number): number {
  return (
    capability.strengthN *
    relativeStrength(capability, rangeShare(capability, zM)) *
    (1 - vMps / capability.maxSpeedMps) *
    strainFactor(capability, tS)
  );
}

import type { Capability } from './Capability.ts';

/** Where a bar height lies in the lifter's full range: 0 at its bottom, 1 at its lockout, outside beyond. */
export function rangeShare(capability: Capability, zM: number): number {
  const { fromM, toM } = capability.range;
  return (zM - fromM) / (toM - fromM);
}

/** `g(s)`: isometric strength at `s` over that at the bottom (model, section 5). */
export function relativeStrength(capability: Capability, s: number): number {
  const { slope, curvature, dip } = capability;
  const straight = slope * s + curvature * s * s;
  if (dip.depth === 0) return Math.exp(straight);
  const offset = (s - dip.at) / dip.width;
  const start = dip.at / dip.width;
  return Math.exp(straight - dip.depth * (Math.exp(-offset * offset) - Math.exp(-start * start)));
}

/** Force (N) that the lifter can just hold still at bar height `zM`: `S g(s)`, their own moved weight included. */
export function heldForceN(capability: Capability, zM: number): number {
  return capability.strengthN * relativeStrength(capability, rangeShare(capability, zM));
}

/**
 * Share of capability at a height: the load at the bar over the load that could just be held still there,
 * `Load / (S g - movedBody g)`. Infinite where the lifter cannot hold their own body there.
 */
export function shareOfCapability(
  totalN: number,
  capability: Capability,
  zM: number,
  gravityMps2: number,
): number {
  const heldAtBarN = heldForceN(capability, zM) - capability.movedBodyKg * gravityMps2;
  return heldAtBarN > 0 ? totalN / heldAtBarN : Number.POSITIVE_INFINITY;
}

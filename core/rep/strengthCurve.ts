import type { Capability } from './Capability.ts';

/** Where a bar height lies in the lifter's full range: 0 at its bottom, 1 at its lockout, outside beyond. */
export function rangeShare(capability: Capability, zM: number): number {
  const { fromM, toM } = capability.range;
  return (zM - fromM) / (toM - fromM);
}

/** Share of strength that can just be held still at a bar height, made ready for many heights: `z -> g(s(z))`. */
export function strengthCurve(capability: Capability): (zM: number) => number {
  const { slope, curvature, dip, range } = capability;
  const perMetre = 1 / (range.toM - range.fromM);
  if (dip.depth === 0) {
    return (zM) => {
      const s = (zM - range.fromM) * perMetre;
      return Math.exp(slope * s + curvature * s * s);
    };
  }
  const atStart = dip.depth * Math.exp(-((dip.at / dip.width) ** 2));
  return (zM) => {
    const s = (zM - range.fromM) * perMetre;
    const offset = (s - dip.at) / dip.width;
    return Math.exp(slope * s + curvature * s * s - dip.depth * Math.exp(-offset * offset) + atStart);
  };
}

/** Force (N) that can just be held still at a bar height, made ready for many heights: `z -> S g(s(z))`. */
export function heldForceFunction(
  capability: Capability,
  curve = strengthCurve(capability),
): (zM: number) => number {
  const { strengthN } = capability;
  return (zM) => strengthN * curve(zM);
}

/** Force (N) that the lifter can just hold still at bar height `zM`: `S g(s)`, their own moved weight included. */
export function heldForceN(capability: Capability, zM: number): number {
  return heldForceFunction(capability)(zM);
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

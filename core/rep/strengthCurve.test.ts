import { describe, expect, it } from 'vitest';
import { heldForceN, shareOfCapability } from './strengthCurve.ts';
import { evenCapability } from './tests/capabilities.ts';

const capability = {
  ...evenCapability,
  strengthN: 4000,
  slope: Math.LN2,
  movedBodyKg: 80,
  range: { fromM: 0.8, toM: 1.6 },
};

const dipAt = (depth: number, s: number) => depth * (Math.exp(-(((s - 0.4) / 0.2) ** 2)) - Math.exp(-4));

describe('the force that can just be held', () => {
  // ln g(s) = slope s + curvature s^2 - depth (e^(-((s - at) / width)^2) - e^(-(at / width)^2)) (docs/model.md, "rep").
  it('follows slope and curvature over the own range and beyond it, with and without a dip', () => {
    const bent = { ...capability, slope: 1.2, curvature: -0.5 };
    for (const depth of [0, 0.2, 1])
      for (const s of [-0.1, 0, 0.3, 0.4, 1]) {
        const dipped = { ...bent, dip: { depth, at: 0.4, width: 0.2 } };
        const expected = 4000 * Math.exp(1.2 * s - 0.5 * s * s - dipAt(depth, s));
        expect(heldForceN(dipped, 0.8 + 0.8 * s)).toBeCloseTo(expected, 6);
      }
  });
});

describe('share of capability', () => {
  it('is the load over what is left for the bar once the own body is held', () => {
    // At 10 m/s2 the body takes 800 N. Bottom: 4000 - 800 = 3200 N for the bar; lockout, twice as strong: 8000 - 800 = 7200 N.
    expect(shareOfCapability(1600, capability, 0.8, 10)).toBeCloseTo(0.5, 12);
    expect(shareOfCapability(1800, capability, 1.6, 10)).toBeCloseTo(0.25, 12);
    expect(shareOfCapability(1, { ...capability, strengthN: 800.5 }, 0.8, 10)).toBeCloseTo(2, 9);
  });

  it('is infinite where not even the own body can be held', () => {
    const weak = { ...capability, strengthN: 700 };
    expect(shareOfCapability(100, weak, 0.8, 10)).toBe(Number.POSITIVE_INFINITY);
    expect(shareOfCapability(100, weak, 1.6, 10)).toBeCloseTo(100 / 600, 12);
  });
});

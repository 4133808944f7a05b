import { describe, expect, it } from 'vitest';
import { shareOfCapability } from './strengthCurve.ts';
import { evenCapability } from './tests/capabilities.ts';

const capability = {
  ...evenCapability,
  strengthN: 4000,
  slope: Math.LN2,
  movedBodyKg: 80,
  range: { fromM: 0.8, toM: 1.6 },
};

describe('share of capability', () => {
  it('is the load over what is left for the bar once the own body is held', () => {
    // At 10 m/s2 the body takes 800 N. Bottom: 4000 - 800 = 3200 N for the bar; lockout, twice as strong: 8000 - 800 = 7200 N.
    expect(shareOfCapability(1600, capability, 0.8, 10)).toBeCloseTo(0.5, 12);
    expect(shareOfCapability(1800, capability, 1.6, 10)).toBeCloseTo(0.25, 12);
  });

  it('is infinite where not even the own body can be held', () => {
    const weak = { ...capability, strengthN: 700 };
    expect(shareOfCapability(100, weak, 0.8, 10)).toBe(Number.POSITIVE_INFINITY);
    expect(shareOfCapability(100, weak, 1.6, 10)).toBeCloseTo(100 / 600, 12);
  });
});

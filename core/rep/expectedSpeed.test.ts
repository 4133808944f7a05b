import { describe, expect, it } from 'vitest';
import { compileLoad } from '../load/compileLoad.ts';
import { clearStrengthN, expectedMps, expectedRep } from './expectedSpeed.ts';
import { squatCapability } from './tests/capabilities.ts';

const correction = { offsetMps: 0.1, perSurplusMps: -0.2, upToLn: 1 };

describe('the speed to expect', () => {
  it('is the model plus the offset plus the slope for each unit of surplus, which counts from nothing to its end', () => {
    // v + offset + slope u (docs/model.md, "day").
    expect(expectedMps(1, 0.4, correction)).toBeCloseTo(1 + 0.1 - 0.2 * 0.4, 12);
    expect(expectedMps(1, 3, correction)).toBeCloseTo(1 + 0.1 - 0.2, 12);
    expect(expectedMps(1, -3, correction)).toBeCloseTo(1 + 0.1, 12);
    expect(expectedMps(0.05, 1, correction)).toBe(0.01);
  });

  it('is worked out at a strength clear of the limit: 0.2 % on its own side, else what it is', () => {
    const at = [-0.5, -0.001, 0, 0.001, 0.5].map((ln) => Math.log(clearStrengthN(2000, ln) / 2000));
    expect(at).toEqual([-0.5, -0.002, 0.002, 0.002, 0.5].map((ln) => expect.closeTo(ln, 12)));
  });

  it('makes a whole rep of a slower lifter last longer over the same way', () => {
    const straight = { barKg: 150, bands: [], hungBands: [], chains: [], path: [] };
    const load = compileLoad({ ...straight, bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665 });
    const rep = (offsetMps: number) =>
      expectedRep(load, squatCapability, 5, { offsetMps, perSurplusMps: 0, upToLn: 1 });
    const [plain, slower] = [rep(0), rep(-0.05)];
    expect(slower.meanSpeedMps).toBeCloseTo(plain.meanSpeedMps - 0.05, 9);
    expect(slower.durationS * slower.meanSpeedMps).toBeCloseTo(plain.durationS * plain.meanSpeedMps, 9);
    expect(slower.peakSpeedMps / slower.meanSpeedMps).toBeCloseTo(plain.peakSpeedMps / plain.meanSpeedMps, 9);
    // Every place is passed later and slower by one factor.
    const later = slower.durationS / plain.durationS;
    expect(later).toBeGreaterThan(1);
    expect(slower.samples.map(({ zM }) => zM)).toEqual(plain.samples.map(({ zM }) => zM));
    for (const [i, { tS, speedMps }] of slower.samples.entries()) {
      expect(tS).toBeCloseTo(later * plain.samples[i]!.tS, 9);
      expect(speedMps).toBeCloseTo(plain.samples[i]!.speedMps / later, 9);
    }
    expect(slower.slowest.speedMps).toBeCloseTo(plain.slowest.speedMps / later, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { clearStrengthN, expectedMps, expectedRep } from './expectedSpeed.ts';
import { repOf } from './simulateRep.ts';
import { squatCapability } from './tests/capabilities.ts';

const loaded = (barKg: number) => compileLoad({ ...bareLoad(0.9, 1.5), barKg });
const by = (offsetMps: number) => ({ offsetMps, perSurplusMps: 0, upToLn: 1 });
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

  it('leaves a rep as the model has it where nothing is known beyond it, and where it is missed', () => {
    const weak = { ...squatCapability, strengthN: 1800 };
    expect(expectedRep(loaded(150), squatCapability, 5, undefined)).toEqual(
      repOf(loaded(150), squatCapability, 5),
    );
    // Where no strength makes a load none is said to be clear of its limit.
    const slow = { ...squatCapability, maxSpeedMps: 1, strainAfterS: 0.1, strainTimeS: 0.05 };
    expect(expectedRep(loaded(150), slow, 5, by(0.1))).toEqual(repOf(loaded(150), slow, 5));
    const missed = expectedRep(loaded(150), weak, 5, by(0.1));
    expect(missed).toMatchObject({
      made: false,
      durationS: expect.closeTo(repOf(loaded(150), weak, 0).durationS, 9),
    });
  });

  it('makes a whole rep of a slower lifter last longer over the same way', () => {
    const plain = repOf(loaded(150), squatCapability, 5);
    const slower = expectedRep(loaded(150), squatCapability, 5, by(-0.05));
    expect(slower.meanSpeedMps).toBeCloseTo(plain.meanSpeedMps - 0.05, 9);
    expect(slower.durationS * slower.meanSpeedMps).toBeCloseTo(plain.durationS * plain.meanSpeedMps, 9);
    expect(slower.peakSpeedMps / slower.meanSpeedMps).toBeCloseTo(plain.peakSpeedMps / plain.meanSpeedMps, 9);
    // Every place is passed later and slower by one factor.
    const later = slower.durationS / plain.durationS;
    expect(later).toBeGreaterThan(1);
    for (const [i, { tS, zM, speedMps }] of slower.samples.entries()) {
      expect(zM).toBeCloseTo(plain.samples[i]!.zM, 9);
      expect(tS).toBeCloseTo(later * plain.samples[i]!.tS, 9);
      expect(speedMps).toBeCloseTo(plain.samples[i]!.speedMps / later, 9);
    }
    expect(slower.slowest.speedMps).toBeCloseTo(plain.slowest.speedMps / later, 9);
  });
});

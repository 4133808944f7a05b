import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandPrior } from './bandPrior.ts';
import { bandTension } from './bandTension.ts';
import { farFromKin, isWithin } from './farFromKin.ts';

/** Rubber's own form (Mooney 1940, J Appl Phys 11:582-592), its two constants as invented. */
const rubberN = (stretch: number) => 2 * (stretch - stretch ** -2) * (40 + 25 / stretch);
const read = (lengthM: number, forceN: number) => ({
  lengthM,
  forceN,
  direction: 'loading' as const,
  takenOn: '2026-03-01',
});
const bare = (restLengthM: number) => ({ restLengthM, widthMm: 41, readings: [] });
const measured = (restLengthM: number, stretches: readonly number[]) => ({
  restLengthM,
  widthMm: 41,
  readings: stretches.map((stretch) => read(stretch * restLengthM, rubberN(stretch))),
});

describe('a reading held against its kin', () => {
  it('by width alone is asked about beyond what one in fifty loops pulls, above and below', () => {
    const widths = fc.double({ min: 10, max: 100, noNaN: true });
    const stretches = fc.double({ min: 1.15, max: 3, noNaN: true });
    fc.assert(
      fc.property(widths, stretches, (widthMm, stretch) => {
        const loop = { restLengthM: 1.04, widthMm, readings: [] };
        const usualN = bandTension(bandPrior(1.04, widthMm, 'loading'), 1.04 * stretch);
        const asked = (times: number) => farFromKin(read(1.04 * stretch, times * usualN), loop, bare(1.04));
        // 2.326 standard deviations leave 1 % on either side (normal table); 0.25 of ln is the spread of a width.
        const limit = Math.exp(2.326 * 0.25);
        expect(asked(limit * 0.99)).toBeNull();
        expect(asked(0.99 ** -1 / limit)).toBeNull();
        expect(asked(limit * 1.01)).toMatchObject({ kin: 'width' });
        expect(asked(1 / limit / 1.01)).toMatchObject({ kin: 'width' });
      }),
    );
  });

  it('by the other loop is asked about beyond the square root of two, and tells what that loop pulls at the same stretch', () => {
    const other = measured(1, [1.3, 1.6, 2, 2.4]);
    for (const stretch of [1.4, 1.8, 2.2]) {
      const at = (times: number) =>
        farFromKin(read(1.1 * stretch, times * rubberN(stretch)), bare(1.1), other);
      expect(at(1.3)).toBeNull();
      expect(at(1 / 1.3)).toBeNull();
      const far = at(2)!;
      expect(far.kin).toBe('otherLoop');
      expect(Math.abs(far.expectedN / rubberN(stretch) - 1)).toBeLessThan(0.03);
      expect(at(0.45359237)).toMatchObject({ kin: 'otherLoop' });
    }
  });

  it('by its own readings goes before the other loop, and no further than they tell', () => {
    const own = measured(1, [1.3, 1.5, 1.7]);
    const stronger = {
      ...own,
      readings: own.readings.map((one) => ({ ...one, forceN: 2 * one.forceN })),
    };
    expect(farFromKin(read(1.8, rubberN(1.8)), own, stronger)).toBeNull();
    expect(farFromKin(read(1.8, 2 * rubberN(1.8)), own, stronger)).toMatchObject({ kin: 'itself' });
    expect(farFromKin(read(2.8, 9 * rubberN(2.8)), own, bare(1))).toMatchObject({ kin: 'width' });
  });

  it('says nothing next to the length at rest, where a centimetre of tape is half the force', () => {
    expect(farFromKin(read(1.05, 2000), bare(1), bare(1))).toBeNull();
  });

  it('is within as far below as above', () => {
    expect(isWithin(150, { expectedN: 100, mostTimes: 1.6 })).toBe(true);
    expect(isWithin(100 / 1.5, { expectedN: 100, mostTimes: 1.6 })).toBe(true);
    expect(isWithin(170, { expectedN: 100, mostTimes: 1.6 })).toBe(false);
    expect(isWithin(100 / 1.7, { expectedN: 100, mostTimes: 1.6 })).toBe(false);
  });
});

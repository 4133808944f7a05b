import { describe, expect, it } from 'vitest';
import { lateBands, pairWork } from './lateBands.ts';
import type { LifterTask } from './misfit.ts';
import { loopsOnPeg, readPair } from './tests/manyPieces.ts';

const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 9.80665, path: [] };
/** A pair read on a scale at bottom and lockout. */
const read = (bottomN: number, lockoutN: number) =>
  readPair('p', { zM: 0.5, forceN: bottomN }, { zM: 1, forceN: lockoutN });
/** Work of a neo-Hookean loop from rest, over its modulus and rest length: the integral of x - 1 / x^2. */
const work = (x: number) => x ** 2 / 2 + 1 / x - 1.5;

describe('the work of a pair above 0.85 of the way', () => {
  it.each([0, 0.1, 0.2, 0.3, 0.4])('is what its curve says, on a peg at %f m', (zM) => {
    // The bar ends at 1 m; 0.85 of the way is 0.925 m.
    const below = (barM: number) => 2 * 200 * 0.5 * work(Math.max(1, (barM - zM) / 0.5));
    const { allNm, lateNm } = pairWork(loopsOnPeg(zM), travel);
    // Trapezoids of a twentieth of the way: at most some of the cell in which the loop goes taut is missed.
    expect(Math.abs(allNm / below(1) - 1)).toBeLessThan(0.04);
    expect(Math.abs(lateNm / (below(1) - below(0.925)) - 1)).toBeLessThan(0.01);
  });

  it('counts a pull from above as one from below', () => {
    // A mean of 200 N over half a metre; above 0.85 one of 285 N over 0.075 m.
    for (const hookup of [read(100, 300), read(-100, -300)]) {
      const { allNm, lateNm } = pairWork(hookup, travel);
      expect(allNm).toBeCloseTo(100, 9);
      expect(lateNm).toBeCloseTo(285 * 0.075, 9);
    }
  });
});

describe('sets whose bands come in late', () => {
  const capability = { by: 'capability' as const, bottomShare: 0.8, lockoutShare: 0.7 };
  // Of 1 N at the bottom to 3 N at lockout 0.21375 lie above 0.85 (2.85 N over 0.15 of the way, of 2 N over all of it); of the
  // other, that pulls alike, 0.15; of both together 0.18.
  const hookups = [read(1, 3), read(2, 2)];
  const isLate = (mostLateShare: number, set: number[], by: LifterTask['aim'] = capability) =>
    lateBands({ hookups }, { aim: by, travel }, { mostLateShare })({ hookups: set });

  it('are those of whose work more lies above the range that is judged than is allowed, all bands together', () => {
    expect([isLate(0.21, [0]), isLate(0.215, [0])]).toEqual([true, false]);
    expect([isLate(0.149, [1]), isLate(0.151, [1])]).toEqual([true, false]);
    expect([isLate(0.18, [0, 1]), isLate(0.183, [0, 1])]).toEqual([true, false]);
    expect(isLate(0.1, [])).toBe(false);
  });

  it('are none where percentages name the heights themselves, nor where any share is allowed', () => {
    const percent = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.5 }] };
    expect([isLate(0, [0], percent), isLate(1, [0])]).toEqual([false, false]);
    expect(isLate(0.1, [0], { by: 'speed', fromMps: 0.5, toMps: 0.6 })).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import { pairWork } from './lateBands.ts';
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

import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import { anchorPulls } from './anchorPulls.ts';
import type { PairHookup } from './Gear.ts';
import { hookupReach, isUsable } from './hookupReach.ts';

const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 9.80665, path: [] };

/** A pair read on a scale at bottom and lockout. */
const read = (bottomN: number, lockoutN: number, ratedLoadN: number | null = null): PairHookup => ({
  pairId: `${bottomN} ${lockoutN}`,
  hookupId: 'h',
  anchorId: 'a',
  ratedLoadN,
  rigged: [],
  measured: {
    count: 1,
    verticalAt: [
      { zM: 0.5, forceN: bottomN },
      { zM: 1, forceN: lockoutN },
    ],
  },
});
/** A pair of loops of 0.5 m, neo-Hookean of 200 N, right above or below the bar's sleeves. */
const hung = (zM: number, ratedLoadN: number | null = null): PairHookup => ({
  ...read(0, 0, ratedLoadN),
  measured: null,
  rigged: [
    {
      curves: fitBand({
        restLengthM: 0.5,
        readings: [1.2, 1.5, 1.8, 2.1].map((x) => ({
          lengthM: 0.5 * x,
          forceN: 200 * (x - x ** -2),
          direction: 'loading',
        })),
      }),
      hookup: { way: 'single' },
      anchor: { xM: 0, yM: 0, zM },
      count: 2,
    },
  ],
});
const usable = (pair: PairHookup, safeStretch = 2.5) => isUsable(hookupReach(pair, travel), safeStretch);

describe('a pair may be proposed', () => {
  it('where it pulls 5 N at one end, from below or from above', () => {
    // Half a kilogram (docs/model.md, "day"): 4.9 N are not worth a band.
    expect(usable(read(0, 4.8))).toBe(false);
    expect(usable(read(0, 5.2))).toBe(true);
    expect(usable(read(-5.2, 0))).toBe(true);
    expect(usable(read(-4.8, 4.8))).toBe(false);
  });

  it('where no loop is stretched beyond what is safe, wherever on the way that is', () => {
    // From the floor 0.5 m of loop reach 1 m up at lockout, twice their length; from 1.7 m they reach 1.2 m down to the bottom.
    expect(usable(hung(0), 2.01)).toBe(true);
    expect(usable(hung(0), 1.99)).toBe(false);
    expect(usable(hung(1.7), 2.41)).toBe(true);
    expect(usable(hung(1.7), 2.39)).toBe(false);
  });

  it('where its anchor holds what one side of it pulls: the tension of one loop, or half of what a scale read', () => {
    const tensionN = 200 * (2 - 2 ** -2);
    expect(usable(hung(0, tensionN + 1))).toBe(true);
    expect(usable(hung(0, tensionN - 1))).toBe(false);
    expect(usable(read(0, 800, 401))).toBe(true);
    expect(usable(read(0, 800, 399))).toBe(false);
  });
});

/** Work of a neo-Hookean loop from rest, over its modulus and rest length: the integral of x - 1 / x^2. */
const work = (x: number) => x ** 2 / 2 + 1 / x - 1.5;

describe('the work of a pair above 0.85 of the way', () => {
  it.each([0, 0.1, 0.2, 0.3, 0.4])('is what its curve says, on a peg at %f m', (zM) => {
    // Two loops of 0.5 m on a bar that ends at 1 m; 0.85 of the way is 0.925 m.
    const below = (barM: number) => 2 * 200 * 0.5 * work(Math.max(1, (barM - zM) / 0.5));
    // From the floor the loop is taut at the bottom already, so that nothing was done before.
    const { workNm, lateWorkNm } = hookupReach(hung(zM), travel);
    // Trapezoids of a twentieth of the way: at most some of the cell in which the loop goes taut is missed.
    expect(Math.abs(workNm / below(1) - 1)).toBeLessThan(0.04);
    expect(Math.abs(lateWorkNm / (below(1) - below(0.925)) - 1)).toBeLessThan(0.01);
  });

  it('counts a pull from above as one from below', () => {
    const [below, above] = [read(100, 300), read(-100, -300)].map((pair) => hookupReach(pair, travel));
    // A mean of 200 N over half a metre; above 0.85 one of 285 N over 0.075 m.
    for (const reach of [below!, above!]) {
      expect(reach.workNm).toBeCloseTo(100, 9);
      expect(reach.lateWorkNm).toBeCloseTo(285 * 0.075, 9);
    }
  });
});

describe('an anchor', () => {
  it('carries the sum of all that hangs on it on its side', () => {
    const gear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [read(0, 800), read(0, 300)] };
    const [anchor, ...others] = anchorPulls(gear, { hookups: [0, 1], chainPairs: [] }, travel);
    expect(others).toEqual([]);
    expect(anchor!.pullN).toBeCloseTo(550, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { anchorPulls } from './anchorPulls.ts';
import type { PairHookup } from './Gear.ts';
import { hookupReach, isUsable } from './hookupReach.ts';
import { loopsOnPeg, readPair } from './tests/manyPieces.ts';

const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 9.80665, path: [] };

/** A pair read on a scale at bottom and lockout. */
const read = (bottomN: number, lockoutN: number, ratedLoadN: number | null = null): PairHookup => ({
  ...readPair(`${bottomN} ${lockoutN}`, { zM: 0.5, forceN: bottomN }, { zM: 1, forceN: lockoutN }),
  ratedLoadN,
});
const hung = (zM: number, ratedLoadN: number | null = null): PairHookup => ({
  ...loopsOnPeg(zM),
  ratedLoadN,
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
    // Of a pair that was read on a scale no loop is known: nothing is stretched.
    expect(usable(read(0, 800), 1)).toBe(true);
  });

  it('where its anchor holds what one side of it pulls: the tension of one loop, or half of what a scale read', () => {
    const tensionN = 200 * (2 - 2 ** -2);
    expect(usable(hung(0, tensionN + 1))).toBe(true);
    expect(usable(hung(0, tensionN - 1))).toBe(false);
    expect(usable(read(0, 800, 401))).toBe(true);
    expect(usable(read(0, 800, 399))).toBe(false);
  });
});

it('may be proposed with just what is allowed, and not where it pulls no more than is worth nothing', () => {
  const reach = { bottomN: -6, lockoutN: 0, stretch: 2.5, anchorN: 100, ratedLoadN: 100 };
  expect(isUsable(reach, 2.5)).toBe(true);
  expect(isUsable({ ...reach, bottomN: -5 }, 2.5)).toBe(false);
});

describe('an anchor', () => {
  it('carries the sum of all that hangs on it on its side', () => {
    const gear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [read(0, 800), read(0, 300)] };
    const [anchor, ...others] = anchorPulls(gear, { hookups: [0, 1], chainPairs: [] }, travel);
    expect(others).toEqual([]);
    expect(anchor!.pullN).toBeCloseTo(550, 9);
  });
});

import { describe, expect, it } from 'vitest';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { bandShare } from './allowedSets.ts';
import { bindingBounds } from './bindingBounds.ts';
import { boundsFor } from './boundsFor.ts';
import type { RackGear } from './Gear.ts';
import { hookupReach } from './hookupReach.ts';
import type { LifterTask } from './misfit.ts';
import { type Fixed, rankSetups } from './rankSetups.ts';
import { freeSearch, noBounds, type SearchBounds } from './SearchRules.ts';
import { readPair } from './tests/manyPieces.ts';

const capability = { ...evenCapability, strengthN: 4000, slope: 0.6 };
const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 10, path: [] };
/** Two pairs of 30 kg each at lockout and nothing at the bottom. */
const gear: RackGear = {
  barKg: 20,
  collarsKg: 0,
  discs: [20, 10, 5, 2.5].map((massKg) => ({ massKg, pairs: 3 })),
  chains: [],
  hookups: ['a', 'b'].map((pairId) => ({
    ...readPair(pairId, { zM: 0.5, forceN: 0 }, { zM: 1, forceN: 300 }),
    anchorId: pairId,
  })),
};
/** 100 of 200 kg at the bottom and 60 more at lockout: both pairs, 30 % of the maximum. */
const targets = [
  { basis: 'bottom' as const, share: 0.5 },
  { basis: 'lockout' as const, share: 0.8 },
];
const task: LifterTask = { capability, travel, referenceKg: 200, aim: { by: 'percent', targets } };
const free = { barKg: null, set: null };
const bound = (bounds: Partial<SearchBounds>, of = task, fixed: Fixed = free) =>
  bindingBounds(of, gear, fixed, { ...freeSearch, bounds: { ...noBounds, ...bounds } });

describe('a bound that keeps a lifter from what the aim would take', () => {
  it('is named with both figures, and not named where it is kept to', () => {
    expect(bound({ leastBarShare: 0.49, leastBandShare: 0.29, mostBandShare: 0.31, mostPairs: 2 })).toEqual(
      [],
    );
    const all = { hookups: [0, 1], chainPairs: [] };
    const exact = bandShare(
      all,
      gear.hookups.map((hookup) => hookupReach(hookup, travel)),
      task,
    );
    expect(bound({ leastBandShare: exact, mostBandShare: exact })).toEqual([]);
    expect(bound({ leastBarShare: 0.55 })).toEqual([{ bound: 'leastBar', limit: 0.55, wanted: 0.5 }]);
    const wanted = expect.closeTo(0.3, 9);
    expect(bound({ leastBandShare: 0.35 })).toEqual([{ bound: 'leastBands', limit: 0.35, wanted }]);
    expect(bound({ mostBandShare: 0.25 })).toEqual([{ bound: 'mostBands', limit: 0.25, wanted }]);
    expect(bound({ mostPairs: 1 })).toEqual([{ bound: 'mostPairs', limit: 1, wanted: 2 }]);
    // 30 kg more at lockout are one pair.
    const one: LifterTask = {
      ...task,
      aim: { by: 'percent', targets: [targets[0]!, { basis: 'lockout', share: 0.65 }] },
    };
    expect(bound({ mostBandShare: 0.1 }, one)).toEqual([
      { bound: 'mostBands', limit: 0.1, wanted: expect.closeTo(0.15, 9) },
    ]);
  });

  it('is none that the coach overrode by his own choice, and none on bands where the aim wants none', () => {
    const everything = { leastBarShare: 0.9, leastBandShare: 0.35, mostBandShare: 0.25, mostPairs: 1 };
    const set = { hookups: [0, 1], chainPairs: [] };
    expect(bound(everything, task, { barKg: 100, set })).toEqual([]);
    const straight: LifterTask = { ...task, aim: { by: 'percent', targets: [targets[0]!] } };
    expect(bound({ leastBandShare: 0.2 }, straight)).toEqual([]);
  });
});

describe('the share of the bands', () => {
  it('is what all of them pull where they pull most: at lockout from below, at the bottom from above', () => {
    const reach = { stretch: 1, anchorN: 0, ratedLoadN: 9000 };
    const below = { ...reach, bottomN: 0, lockoutN: 300 };
    const above = { ...reach, bottomN: -500, lockoutN: -100 };
    const of = (...hookups: number[]) => bandShare({ hookups, chainPairs: [] }, [below, above, below], task);
    // At 10 m/s2 a maximum of 200 kg weighs 2000 N.
    expect(of(0)).toBeCloseTo(0.15, 12);
    expect(of(1)).toBeCloseTo(0.25, 12);
    expect(of(0, 2)).toBeCloseTo(0.3, 12);
  });
});

const onBar = (share: number) => ({ basis: 'bar' as const, share });

describe('percentages of the coach', () => {
  const bounds = { leastBarShare: 0.4, leastBandShare: 0.25, mostBandShare: 0.45, mostPairs: 3 };
  const by = (...named: { basis: 'bar' | 'lockout'; share: number }[]) =>
    boundsFor({ by: 'percent', targets: named }, bounds);

  it('lower the least bar where they name less, never raise it, and free the bands only beside another share', () => {
    expect(by(onBar(0.3))).toEqual({ ...bounds, leastBarShare: 0.3 });
    expect(by(onBar(0.6))).toEqual(bounds);
    expect(by({ basis: 'lockout', share: 0.3 })).toEqual(bounds);
    const unbound = { leastBandShare: 0, mostBandShare: Number.POSITIVE_INFINITY };
    expect(by(onBar(0.6), { basis: 'lockout', share: 0.7 })).toEqual({ ...bounds, ...unbound });
  });
});

describe('the least bar', () => {
  it('leaves the heaviest that the discs load where they do not reach it', () => {
    // 20 kg of bar and 37.5 a side three times over are 245 kg; nine tenths of 300 are 270.
    const heavy: LifterTask = { ...task, referenceKg: 300 };
    const rules = { ...freeSearch, bounds: { ...noBounds, leastBarShare: 0.9 } };
    const ranking = rankSetups(heavy, gear, { barKg: null, set: { hookups: [], chainPairs: [] } }, rules);
    expect(ranking.fromBest()()!.barKg).toBe(245);
  });
});

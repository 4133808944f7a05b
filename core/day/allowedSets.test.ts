import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import type { Aim } from './Aim.ts';
import { allowedGear, bandShare } from './allowedSets.ts';
import { bindingBounds } from './bindingBounds.ts';
import type { RackGear } from './Gear.ts';
import { hookupReach } from './hookupReach.ts';
import { prescribe } from './prescribe.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch, noBounds, type SearchRules } from './SearchRules.ts';
import { anyPair, readPair } from './tests/manyPieces.ts';

// The starting values of a squat in docs/model.md; strength for a maximum of some 300 kg.
const capability = squatCapability;
const travel = { bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };
const RATED_N = 600;
const SAFE_STRETCH = 2.5;

/** Made-up stocks of unread bands on two kinds of pegs: some slack all the way, some stretched far, some strong. */
const stocks = fc
  .array(
    fc.record({
      widthMm: fc.constantFrom(13, 22, 29, 44, 64),
      restLengthM: fc.double({ min: 0.4, max: 1.8, noNaN: true }),
      low: fc.boolean(),
      doubled: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map(
    (bands): RackGear => ({
      barKg: 20,
      collarsKg: 0,
      discs: [25, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 4 })),
      chains: [],
      hookups: bands.map(({ widthMm, restLengthM, low, doubled }, i) => ({
        pairId: `p${i}`,
        hookupId: 'h',
        anchorId: low ? 'low' : 'high',
        ratedLoadN: RATED_N,
        rigged: [
          {
            curves: fitBand({ restLengthM, widthMm, readings: [] }),
            hookup: { way: doubled ? 'doubled' : 'single' },
            anchor: { xM: 0, yM: 0.1, zM: low ? 0.05 : 0.5 },
            count: 2,
          },
        ],
        measured: null,
      })),
    }),
  );

const read = (forceN: number) => ({
  count: 2,
  verticalAt: [
    { zM: 0.9, forceN: 0 },
    { zM: 1.5, forceN },
  ],
});
const twoOnOnePeg = (ratedLoadN: number): RackGear => ({
  barKg: 20,
  collarsKg: 0,
  discs: [],
  chains: [],
  hookups: [400, 300].map((forceN, i) => ({
    ...anyPair(`p${i}`),
    ratedLoadN,
    measured: read(forceN),
  })),
});
const band = (forceN: number) => readPair(`p${forceN}`, { zM: 0.9, forceN: 0 }, { zM: 1.5, forceN });

/** A pair that pulls in a straight line from a height on, up to 300 N at lockout. */
const rising = (fromM: number, pairId: string) =>
  readPair(pairId, { zM: fromM, forceN: 0 }, { zM: 1.5, forceN: 300 });

describe('what may be proposed', () => {
  it('never stretches a band too far, never overloads an anchor by all its bands together, never hangs a slack pair', () => {
    fc.assert(
      fc.property(stocks, fc.double({ min: 0.4, max: 1.2, noNaN: true }), (gear, share) => {
        const aim = { by: 'capability' as const, bottomShare: share, lockoutShare: share };
        const task = { capability, travel, aim, referenceKg: 300 };
        const { best, runnersUp } = prescribe(task, gear, {
          rules: { ...freeSearch, safeStretch: SAFE_STRETCH, bounds: noBounds },
        });
        for (const { set } of [best, ...runnersUp]) {
          const onAnchor = new Map<string, number>();
          for (const index of set.hookups) {
            const { rigged, anchorId } = gear.hookups[index]!;
            const pull = bandPull(rigged[0]!, [], travel.bottomM, travel.lockoutM);
            expect(pull.stretch(travel.lockoutM)).toBeLessThanOrEqual(SAFE_STRETCH);
            expect(pull.downN(travel.lockoutM)).toBeGreaterThan(0);
            onAnchor.set(anchorId, (onAnchor.get(anchorId) ?? 0) + pull.anchorN(travel.lockoutM));
          }
          for (const pullN of onAnchor.values()) expect(pullN).toBeLessThanOrEqual(RATED_N);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('lets bands hang that pull just the least or just the most that may be proposed, and none beyond', () => {
    // 500 N are 50 kg, a quarter of 200.
    const gear = { ...twoOnOnePeg(RATED_N), hookups: [band(500)] };
    const aim = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
    const task = { capability, travel: { ...travel, gravityMps2: 10 }, aim, referenceKg: 200 };
    const isAllowed = (bounds: Partial<SearchRules['bounds']>) =>
      allowedGear(gear, task, { ...freeSearch, bounds: { ...noBounds, ...bounds } }, 20).isAllowed({
        hookups: [0],
        chainPairs: [],
      });
    expect([0.2499, 0.25, 0.2501].map((leastBandShare) => isAllowed({ leastBandShare }))).toEqual([
      true,
      true,
      false,
    ]);
    expect([0.2499, 0.25, 0.2501].map((mostBandShare) => isAllowed({ mostBandShare }))).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('hangs no bands for a share or a speed that together do most of their work above the way that is judged', () => {
    // In straight lines from 0.9 m and from 1.26 m on, the bottom and 0.6 of the way: up to 300 N at lockout they take 90 and 36 N m,
    // of which 1 - 0.85^2 and 1 - (0.25 / 0.4)^2 lie above 0.85: 25 and 22 N m, more than half of the late pair's alone.
    const hookups = [rising(0.9, 'early'), rising(1.26, 'late'), rising(1.26, 'late too')];
    const sets = (aim: Aim, rules: SearchRules) =>
      rankSetups(
        { capability, travel, aim, referenceKg: 300 },
        { ...twoOnOnePeg(9000), hookups },
        undefined,
        rules,
      )
        .sets.map((set) => set.hookups.join('+'))
        .sort();
    const rules = { ...freeSearch, mostLateShare: 0.5 };
    const any = ['', '0', '0+1', '0+1+2', '0+2', '1', '1+2', '2'];
    const early = ['', '0', '0+1', '0+1+2', '0+2'];
    const share = { by: 'capability' as const, bottomShare: 0.7, lockoutShare: 0.4 };
    const speed = { by: 'speed' as const, fromMps: 0.6, toMps: 0.8 };
    for (const aim of [share, speed]) {
      expect(sets(aim, rules)).toEqual(early);
      expect(sets(aim, freeSearch)).toEqual(any);
    }
    // Percentages name the heights that they look at.
    expect(sets({ by: 'percent', targets: [{ basis: 'lockout', share: 0.7 }] }, rules)).toEqual(any);
  });

  it('keeps each of two pairs that an anchor holds alone, and not both where together they are too much', () => {
    // One point carries half of what a pair pulls: 400 and 300 N on pegs for 600.
    const aim = { by: 'percent' as const, targets: [{ basis: 'lockout' as const, share: 0.5 }] };
    const task = { capability, travel, aim, referenceKg: 300 };
    const sets = (ratedLoadN: number) =>
      rankSetups(task, twoOnOnePeg(ratedLoadN)).sets.map(({ hookups }) => hookups.join('+'));
    expect(sets(699)).toEqual(['', '0', '1']);
    expect(sets(700)).toEqual(['', '0', '1', '0+1']);
    expect(sets(399)).toEqual(['', '1']);
  });

  it('counts bands where they pull most: at lockout from below, at the bottom from above', () => {
    // 60 of 300 kg are a fifth.
    const sixtyKgN = 60 * 9.80665;
    for (const [bottomN, lockoutN] of [
      [0, sixtyKgN],
      [-sixtyKgN, 0],
    ] as const)
      expect(shareOf(bottomN, lockoutN)).toBeCloseTo(0.2, 12);
  });

  it('keeps bar and bands within the bounds whatever the aim, and forces bands on nobody', () => {
    const bounds = { leastBarShare: 0.4, leastBandShare: 0.25, mostBandShare: 0.45, mostPairs: 2 };
    fc.assert(
      fc.property(
        stocks,
        fc.double({ min: 0.2, max: 1.2, noNaN: true }),
        fc.boolean(),
        (gear, share, bySpeed) => {
          const aim = bySpeed
            ? { by: 'speed' as const, fromMps: share, toMps: share + 0.1 }
            : { by: 'capability' as const, bottomShare: share, lockoutShare: share };
          const task = { capability, travel, aim, referenceKg: 300 };
          const { best, runnersUp } = prescribe(task, gear, { rules: { ...freeSearch, bounds } });
          for (const { set, barKg } of [best, ...runnersUp]) {
            expect(barKg).toBeGreaterThanOrEqual(0.4 * 300);
            expect(set.hookups.length).toBeLessThanOrEqual(2);
            const bandN = set.hookups
              .map((index) => bandPull(gear.hookups[index]!.rigged[0]!, [], travel.bottomM, travel.lockoutM))
              .reduce((sum, pull) => sum + pull.downN(travel.lockoutM), 0);
            if (set.hookups.length === 0) continue;
            expect(bandN / 9.80665 / 300).toBeGreaterThanOrEqual(0.25);
            expect(bandN / 9.80665 / 300).toBeLessThanOrEqual(0.45);
          }
          const bare = rankSetups(task, { ...gear, hookups: [] }, undefined, { ...freeSearch, bounds });
          expect(bare.sets).toEqual([{ hookups: [], chainPairs: [] }]);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('lets percentages that name the bar and the whole load say themselves how much hangs', () => {
    const bounds = { leastBarShare: 0.4, leastBandShare: 0.25, mostBandShare: 0.45, mostPairs: 3 };
    // 10 % of 300 kg: below the least share of the bounds, and asked for.
    const gear: RackGear = {
      barKg: 20,
      collarsKg: 0,
      discs: [25, 10, 5].map((massKg) => ({ massKg, pairs: 4 })),
      chains: [],
      hookups: [band(30 * 9.80665)],
    };
    const targets = [
      { basis: 'bar' as const, share: 0.3 },
      { basis: 'lockout' as const, share: 0.4 },
    ];
    const task = { capability, travel, aim: { by: 'percent' as const, targets }, referenceKg: 300 };
    const { best } = prescribe(task, gear, { rules: { ...freeSearch, bounds } });
    expect([best.barKg, best.set.hookups]).toEqual([90, [0]]);
    expect(bindingBounds(task, gear, { barKg: null, set: null }, { ...freeSearch, bounds })).toEqual([]);
  });

  it('names the bounds that the aim alone would break', () => {
    const bounds = { leastBarShare: 0.4, leastBandShare: 0, mostBandShare: 1, mostPairs: 3 };
    const aim = { by: 'percent' as const, targets: [{ basis: 'mean' as const, share: 0.2 }] };
    const task = { capability, travel, aim, referenceKg: 300 };
    const gear = { barKg: 20, collarsKg: 0, discs: [{ massKg: 20, pairs: 4 }], chains: [], hookups: [] };
    // 20 % of 300 kg is 60 kg, which the discs can load; 40 % are 120 kg, and the next that can be loaded 140.
    const rules = { ...freeSearch, bounds };
    expect(bindingBounds(task, gear, { barKg: null, set: null }, rules)).toEqual([
      { bound: 'leastBar', limit: 0.4, wanted: 0.2 },
    ]);
    expect(prescribe(task, gear, { rules }).best.barKg).toBe(140);
  });
});

it('a set may leave the lightest bar exactly what the lifter may hold, and not a gram less', () => {
  // Of 45 kg at lockout a pair of 200 N takes 20 kg, where a kilogram weighs 10 N: 25 kg are left.
  const gear = { ...bare, hookups: [readPair('p', { zM: 0.9, forceN: 100 }, { zM: 1.5, forceN: 200 })] };
  const task = {
    travel: { ...travel, gravityMps2: 10 },
    aim: { by: 'percent' as const, targets: [] },
    referenceKg: 300,
    most: { barKg: Number.POSITIVE_INFINITY, lockoutKg: 45, heaviestStep: 1 },
  };
  const isAllowed = (lightestKg: number) =>
    allowedGear(gear, task, freeSearch, lightestKg).isAllowed({ hookups: [0], chainPairs: [] });
  expect([25, 25.001].map(isAllowed)).toEqual([true, false]);
});

/** Of all bands of a pair that was read on the scale at two heights, for a lifter whose maximum is 300 kg. */
function shareOf(bottomN: number, lockoutN: number): number {
  const pair = readPair('p', { zM: 0.9, forceN: bottomN }, { zM: 1.5, forceN: lockoutN });
  return bandShare({ hookups: [0], chainPairs: [] }, [hookupReach(pair, travel)], {
    travel,
    referenceKg: 300,
  });
}

const bare: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [] };

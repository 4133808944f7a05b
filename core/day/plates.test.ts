import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BarAndDiscs, finestStepKg, loadableMasses, plates } from './plates.ts';

/** Every way to load one side, written out: the independent reference. */
function everyLoading(gear: BarAndDiscs): { loadedKg: number; counts: number[]; discs: number }[] {
  let ways: number[][] = [[]];
  for (const disc of gear.discs) {
    ways = ways.flatMap((way) => Array.from({ length: disc.pairs + 1 }, (_, count) => [...way, count]));
  }
  return ways.map((counts) => ({
    counts,
    discs: counts.reduce((sum, count) => sum + count, 0),
    loadedKg:
      gear.barKg +
      gear.collarsKg +
      counts.reduce((sum, count, k) => sum + 2 * count * gear.discs[k]!.massKg, 0),
  }));
}

const pairs = fc.integer({ min: 0, max: 3 });
const oddDiscs = fc.uniqueArray(
  fc.record({ massKg: fc.integer({ min: 250, max: 26_000 }).map((g) => g / 1000), pairs }),
  { maxLength: 5, selector: (disc) => disc.massKg },
);
/** Of which several make up a heavier one, and two of 20 what a 25 only does with two more. */
const evenDiscs = fc
  .tuple(pairs, pairs, pairs, pairs)
  .map((counts) => counts.map((count, k) => ({ massKg: [25, 20, 10, 5][k]!, pairs: count })));
const gears = fc.record({
  barKg: fc.constantFrom(15, 20, 25.013),
  collarsKg: fc.constantFrom(0, 5),
  discs: fc.oneof(oddDiscs, evenDiscs),
});
/** Evenly spread: doubles of fast-check lie near 0 mostly, where the bar stays bare. */
const targets = fc.integer({ min: 0, max: 300_000 }).map((g) => g / 1000);
const grams = (kg: number) => Math.round(kg * 1000);
const usualDiscs = [25, 20, 15, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 2 }));

const usualLoadKg = (targetKg: number) =>
  plates({ targetKg, barKg: 20, collarsKg: 0, discs: usualDiscs }).loadedKg;

describe('plates', () => {
  it('is as near as any loading of odd weighed or usual discs, and no equally near loading has fewer discs', () => {
    fc.assert(
      fc.property(gears, targets, (gear, targetKg) => {
        const loaded = plates({ ...gear, targetKg });
        const ways = everyLoading(gear);
        const miss = (kg: number) => Math.abs(kg - targetKg);
        const least = Math.min(...ways.map((way) => miss(way.loadedKg)));
        expect(miss(loaded.loadedKg)).toBeLessThanOrEqual(least + 2e-6);
        const alike = ways.filter((way) => Math.abs(way.loadedKg - loaded.loadedKg) < 1e-6);
        expect(alike.length).toBeGreaterThan(0);
        const discs = loaded.perSide.reduce((sum, disc) => sum + disc.count, 0);
        expect(discs).toBe(Math.min(...alike.map((way) => way.discs)));
      }),
      { numRuns: 300 },
    );
  });

  it('never takes more of a disc than there are pairs, and hangs the heaviest inside', () => {
    fc.assert(
      fc.property(gears, targets, (gear, targetKg) => {
        const { perSide, loadedKg } = plates({ ...gear, targetKg });
        for (const disc of perSide) {
          expect(disc.count).toBeLessThanOrEqual(
            gear.discs.find((kind) => kind.massKg === disc.massKg)!.pairs,
          );
        }
        expect(perSide.map((disc) => disc.massKg)).toEqual(
          perSide.map((disc) => disc.massKg).sort((a, b) => b - a),
        );
        const discsKg = perSide.reduce((sum, disc) => sum + 2 * disc.count * disc.massKg, 0);
        expect(loadedKg).toBeCloseTo(gear.barKg + gear.collarsKg + discsKg, 9);
      }),
    );
  });

  it('takes the lighter of two equally near loads', () => {
    expect(plates({ targetKg: 101.25, barKg: 20, collarsKg: 0, discs: usualDiscs }).loadedKg).toBe(100);
    // Pounds make no round numbers of kilograms: bars of 55, 65, 75 ... lb, and targets right between them.
    const pounds = [45, 25, 10, 5].map((lb) => ({ massKg: lb * 0.45359237, pairs: 3 }));
    for (let lb = 60; lb < 250; lb += 10) {
      const loaded = plates({
        targetKg: lb * 0.45359237,
        barKg: 45 * 0.45359237,
        collarsKg: 0,
        discs: pounds,
      });
      expect(loaded.loadedKg / 0.45359237).toBeCloseTo(lb - 5, 9);
    }
  });

  it('takes the heavier load where it is the nearer one, with discs that all weigh so many times the lightest', () => {
    // Bars come in steps of 2.5 kg.
    expect([101, 101.5, 102, 102.5, 103.7].map(usualLoadKg)).toEqual([100, 102.5, 102.5, 102.5, 102.5]);
    expect([103.8, 21, 21.5].map(usualLoadKg)).toEqual([105, 20, 22.5]);
    // Of one pair each of 25, 2.5 and 1.25 kg nothing loads more than 27.5 kg and less than 70, which is nearer to 60.
    const few = [25, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 1 }));
    expect(plates({ targetKg: 60, barKg: 20, collarsKg: 0, discs: few }).loadedKg).toBe(70);
  });

  it('leaves the bar bare when the target is lighter than bar and collars', () => {
    expect(plates({ targetKg: 10, barKg: 20, collarsKg: 5, discs: usualDiscs })).toEqual({
      loadedKg: 25,
      perSide: [],
    });
    expect(plates({ targetKg: 90, barKg: 20, collarsKg: 0, discs: [] })).toEqual({
      loadedKg: 20,
      perSide: [],
    });
  });

  it('loads a bar as lifters do: 182.5 kg with 5 kg of collars from two pairs of each disc', () => {
    // Counting by hand: (182.5 - 25) / 2 = 78.75 = 25 + 25 + 20 + 5 + 2.5 + 1.25 with two pairs of each.
    expect(plates({ targetKg: 182.5, barKg: 20, collarsKg: 5, discs: usualDiscs }).perSide).toEqual([
      { massKg: 25, count: 2 },
      { massKg: 20, count: 1 },
      { massKg: 5, count: 1 },
      { massKg: 2.5, count: 1 },
      { massKg: 1.25, count: 1 },
    ]);
  });
});

describe('discs that nobody can load', () => {
  const some = [{ massKg: 20, pairs: 2 }];
  const none = [
    { massKg: 0, pairs: 2 },
    { massKg: 5, pairs: 0 },
  ];
  const gear = { barKg: 20, collarsKg: 0, discs: [...some, ...none] };

  it('count for nothing: a pair that is not there, or weighs nothing', () => {
    expect(plates({ ...gear, targetKg: 70 })).toEqual({ loadedKg: 60, perSide: [{ massKg: 20, count: 1 }] });
    expect(loadableMasses(gear)).toEqual([20, 60, 100]);
    expect(finestStepKg({ discs: [...some, none[1]!] })).toBe(40);
  });
});

describe('the finest step of a bar', () => {
  it('is a pair of the lightest discs at hand, and none without discs', () => {
    expect(finestStepKg({ discs: usualDiscs })).toBe(2.5);
    expect(finestStepKg({ discs: [...usualDiscs, { massKg: 0.5, pairs: 1 }] })).toBe(1);
    expect(finestStepKg({ discs: [] })).toBe(0);
  });
});

describe('loadableMasses', () => {
  it('lists exactly the masses that some loading gives, each once, ascending', () => {
    fc.assert(
      fc.property(gears, (gear) => {
        const every = [...new Set(everyLoading(gear).map((way) => grams(way.loadedKg)))].sort(
          (a, b) => a - b,
        );
        expect(loadableMasses(gear).map(grams)).toEqual(every);
      }),
    );
  });

  it('ends with 500 kg of discs a side, however many sorts are at hand', () => {
    const discs = [20, 1.002].map((massKg) => ({ massKg, pairs: 1000 }));
    const masses = loadableMasses({ barKg: 20, collarsKg: 5, discs });
    // 25 discs of 20 kg a side; forty grams more than 500 kg would be 24 of them and 20 of 1.002 kg.
    expect(masses.at(-1)).toBe(25 + 1000);
    expect(masses).not.toContain(25 + 2 * (24 * 20 + 20 * 1.002));
    expect(masses.map(grams)).toContain(grams(25 + 2 * (24 * 20 + 19 * 1.002)));
    const even = [20, 1].map((massKg) => ({ massKg, pairs: 1000 }));
    expect(loadableMasses({ barKg: 20, collarsKg: 5, discs: even }).at(-1)).toBe(25 + 1000);
  });
});

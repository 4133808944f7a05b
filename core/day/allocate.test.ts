import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AllocationInput } from './Allocation.ts';
import { allocate } from './allocate.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** Evenly spread: doubles of fast-check lie near 0 mostly, where nothing is fought over. */
const misfit = fc.integer({ min: 0, max: 2000 }).map((tenThousandths) => tenThousandths / 10_000);

/** Up to two pairs in up to two hookups and one kind of chain, of which racks may list different numbers. */
const gears = fc
  .record({
    ways: fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 1, maxLength: 2 }),
    chainPairs: fc.integer({ min: 0, max: 1 }),
  })
  .map(
    ({ ways, chainPairs }): RackGear => ({
      barKg: 20,
      collarsKg: 0,
      discs: [],
      hookups: ways.flatMap((count, pair) =>
        Array.from({ length: count }, (_, way) => ({
          pairId: `p${pair}`,
          hookupId: `h${way}`,
          anchorId: 'a',
          ratedLoadN: null,
          rigged: [],
          measured: null,
        })),
      ),
      chains: [
        {
          chainPairId: 'c',
          pairs: chainPairs,
          chain: { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 },
        },
      ],
    }),
  );

function rankingOf(sets: readonly GearSet[], misfits: readonly number[]): SetupRanking {
  const scoreOf = (index: number) => ({ index, barKg: 20, misfit: misfits[index]! });
  const order = sets.map((_, index) => index).sort((a, b) => misfits[a]! - misfits[b]!);
  return {
    sets,
    next: () => (order.length > 0 ? scoreOf(order.shift()!) : null),
    scoreOf,
    // A bound that is not tight, as that of an unsimulated set.
    lowerBoundOf: (index) => misfits[index]! / 2,
    reps: () => 0,
  };
}

const problems = fc
  .record({
    gear: gears,
    chainsAt: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 2, maxLength: 2 }),
    rackOf: fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 1, maxLength: 4 }),
    misfits: fc.infiniteStream(misfit),
    oneSetPull: fc.constantFrom(0, 0.3, 0.5, 0.8, 1),
    bandChangeMinutes: fc.constantFrom(0, 1, 2),
    fixed: fc.option(fc.record({ lifter: fc.nat(3), set: fc.nat(20) })),
  })
  .map(({ gear, chainsAt, rackOf, misfits, fixed, ...rest }): AllocationInput => {
    const racks = chainsAt.map((count) => ({
      ...gear,
      chains: gear.chains.map((kind) => ({ ...kind, pairs: Math.min(kind.pairs, 1) * count })),
    }));
    const lifters = rackOf.map((rack, i) => {
      const sets = enumerateSetups(racks[rack]!);
      const setFixed = fixed?.lifter === i;
      const own = setFixed ? [sets[fixed.set % sets.length]!] : sets;
      return { rack, weight: 1, setFixed, ranking: rankingOf(own, [...misfits.take(own.length)]) };
    });
    return { ...rest, racks, lifters, outOfTime: () => false };
  });

const key = (set: GearSet) => `${set.hookups.join()}/${set.chainPairs.join()}`;

/** Cost by trying every choice of every lifter, straight from the rules. */
function leastByTrying({ racks, lifters, oneSetPull, bandChangeMinutes }: AllocationInput): number {
  const input = { racks, lifters, oneSetPull, bandChangeMinutes };
  let choices: number[][] = [[]];
  for (const { ranking } of lifters)
    choices = choices.flatMap((way) => ranking.sets.map((_, set) => [...way, set]));
  return choices.reduce(
    (least, choice) => Math.min(least, costByRules(input, choice)),
    Number.POSITIVE_INFINITY,
  );
}

/** What one choice costs; endless where it cannot hang. */
function costByRules(
  { racks, lifters, oneSetPull, bandChangeMinutes }: Omit<AllocationInput, 'outOfTime'>,
  choice: readonly number[],
): number {
  const gear = racks[0]!;
  const weight = oneSetPull === 1 ? 1 : (0.01 * oneSetPull) / (1 - oneSetPull);
  const taken = lifters.map(({ ranking }, i) => ranking.sets[choice[i]!]!);
  const at = racks.map((_, rack) => taken.filter((_set, i) => lifters[i]!.rack === rack));
  const pairsAt = at.map(
    (sets) => new Set(sets.flatMap((set) => set.hookups.map((index) => gear.hookups[index]!.pairId))),
  );
  const hung = pairsAt.flatMap((pairs) => [...pairs]);
  if (new Set(hung).size < hung.length) return Number.POSITIVE_INFINITY;
  const chains = at.map((sets) => Math.max(0, ...sets.map((set) => set.chainPairs[0] ?? 0)));
  const stock = Math.max(...racks.map((rack) => rack.chains[0]?.pairs ?? 0));
  if (chains.reduce((sum, pairs) => sum + pairs, 0) > stock) return Number.POSITIVE_INFINITY;
  const free = racks.map((_, rack) =>
    taken.filter((_set, i) => lifters[i]!.rack === rack && !lifters[i]!.setFixed).map(key),
  );
  if (oneSetPull === 1 && free.some((keys) => new Set(keys).size > 1)) return Number.POSITIVE_INFINITY;
  let changes = 0;
  for (const sets of at) {
    sets.forEach((set, i) => {
      const next = sets[(i + 1) % sets.length]!;
      const differs = gear.hookups.filter(
        (_, h) => set.hookups.includes(h) !== next.hookups.includes(h),
      ).length;
      changes += differs + Math.abs((set.chainPairs[0] ?? 0) - (next.chainPairs[0] ?? 0));
    });
  }
  const misfit = lifters.reduce((sum, { ranking }, i) => sum + ranking.scoreOf(choice[i]!).misfit, 0);
  const pieces = taken.reduce((sum, set) => sum + set.hookups.length, 0);
  return misfit + weight * changes * bandChangeMinutes + 1e-4 * pieces;
}

/** Lifters at three racks that all list the same pairs, no chains. */
function crowded(pairCount: number, mostLifters: number) {
  const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(pairCount) };
  const sets = enumerateSetups(gear);
  return fc
    .record({
      misfits: fc.array(
        fc.array(misfit, {
          minLength: sets.length,
          maxLength: sets.length,
        }),
        { minLength: 2, maxLength: mostLifters },
      ),
      oneSetPull: fc.constantFrom(0, 0.2, 0.5, 0.9, 1),
    })
    .map(
      ({ misfits, oneSetPull }): AllocationInput => ({
        racks: [gear, gear, gear],
        lifters: misfits.map((own, i) => ({
          rack: i % 3,
          weight: 1,
          setFixed: false,
          ranking: rankingOf(sets, own),
        })),
        oneSetPull,
        bandChangeMinutes: 1,
        outOfTime: () => false,
      }),
    );
}

/** Each pair is given to a rack by chance; there every lifter takes one of the sets that can then hang. */
function costByChance(input: AllocationInput, chance: () => number): number {
  const rackOf = input.racks[0]!.hookups.map(() => Math.floor(chance() * input.racks.length));
  const one = Math.floor(chance() * 1000);
  const choice = input.lifters.map(({ rack, ranking }) => {
    const fit = [...ranking.sets.keys()].filter((index) =>
      ranking.sets[index]!.hookups.every((hookup) => rackOf[hookup] === rack),
    );
    const isShared = input.oneSetPull === 1;
    return fit[isShared ? one % fit.length : Math.floor(chance() * fit.length)]!;
  });
  return costByRules(input, choice);
}

/** Numbers from 0 to 1 that look like chance, from a seed. */
function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('allocate', () => {
  it('costs as little as the best of all allocations, and says so', () => {
    fc.assert(
      fc.property(problems, (input) => {
        const least = leastByTrying(input);
        const allocation = allocate(input);
        expect(allocation.clashes).toEqual([]);
        expect(allocation.total).toBeCloseTo(least, 6);
        expect(allocation.proof.bound).toBeLessThanOrEqual(least + 1e-6);
        expect(allocation.proof.gap).toBeLessThan(1e-5);
      }),
      { numRuns: 300 },
    );
  });

  it('costs the same in whatever order the racks are listed', () => {
    fc.assert(
      fc.property(problems, (input) => {
        const mirrored = {
          ...input,
          racks: input.racks.toReversed(),
          lifters: input.lifters.map((lifter) => ({ ...lifter, rack: 1 - lifter.rack })),
        };
        expect(allocate(mirrored).total).toBeCloseTo(allocate(input).total, 6);
      }),
      { numRuns: 200 },
    );
  });

  it('never claims more than it has proven, whenever time is up', () => {
    fc.assert(
      fc.property(problems, fc.nat(12), (input, questions) => {
        let left = questions;
        const { total, proof } = allocate({ ...input, outOfTime: () => left-- <= 0 });
        const least = leastByTrying(input);
        expect(total).toBeGreaterThanOrEqual(least - 1e-9);
        expect(proof.bound).toBeLessThanOrEqual(least + 1e-9);
        expect(proof.gap).toBeCloseTo(total - proof.bound, 9);
      }),
      { numRuns: 300 },
    );
  });

  it('hangs every pair at one rack only, and says how far from the best it may be when time is up', () => {
    const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(5) };
    const sets = enumerateSetups(gear);
    const misfits = fc.sample(
      fc.array(misfit, {
        minLength: sets.length,
        maxLength: sets.length,
      }),
      {
        numRuns: 6,
        seed: 11,
      },
    );
    const lifters = () =>
      misfits.map((own, i) => ({ rack: i % 3, weight: 1, setFixed: false, ranking: rankingOf(sets, own) }));
    const input = { racks: [gear, gear, gear], bandChangeMinutes: 1, oneSetPull: 0.2 };
    const hurried = allocate({ ...input, lifters: lifters(), outOfTime: () => true });
    const proven = allocate({ ...input, lifters: lifters(), outOfTime: () => false });
    expect(proven.proof.gap).toBeLessThan(1e-8);
    expect(hurried.proof.bound).toBeLessThanOrEqual(proven.total + 1e-9);
    expect(hurried.total).toBeGreaterThanOrEqual(proven.total - 1e-9);
    expect(hurried.total - hurried.proof.gap).toBeLessThanOrEqual(proven.total + 1e-9);
    for (const { chosen } of [hurried, proven]) {
      const racksOf = gear.hookups.map(
        (_, h) => new Set(chosen.flatMap(({ set }, i) => (set.hookups.includes(h) ? [i % 3] : []))),
      );
      expect(Math.max(...racksOf.map((racks) => racks.size))).toBeLessThanOrEqual(1);
    }
  });

  it('finds the best of three racks that all want the same three pairs', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const { total, proof } = allocate(input);
        expect(total).toBeCloseTo(leastByTrying(input), 6);
        expect(proof.status).toBe('optimal');
      }),
      { numRuns: 100 },
    );
  });

  it('never loses to an allocation drawn by chance, nor claims a bound above one, however early time is up', () => {
    fc.assert(
      fc.property(
        crowded(5, 9),
        fc.constantFrom(0, 1, 5, 20, Number.POSITIVE_INFINITY),
        fc.nat(1e6),
        (input, questions, seed) => {
          let left = questions;
          const { total, proof } = allocate({ ...input, outOfTime: () => left-- <= 0 });
          const chance = lcg(seed);
          let least = Number.POSITIVE_INFINITY;
          for (let trial = 0; trial < 300; trial++) least = Math.min(least, costByChance(input, chance));
          expect(proof.bound).toBeLessThanOrEqual(least + 1e-9);
          // Cut short, what is found hangs at once but need not be good.
          if (questions === Number.POSITIVE_INFINITY) expect(total).toBeLessThanOrEqual(least + 1e-9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('costs the same whatever the pairs are called, in whatever order racks list them', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const last = input.racks[0]!.hookups.length - 1;
        const turned = {
          ...input,
          racks: input.racks.map((gear) => ({
            ...gear,
            hookups: gear.hookups.toReversed().map((one) => ({ ...one, pairId: `other ${one.pairId}` })),
          })),
          lifters: input.lifters.map(({ ranking, ...lifter }) => ({
            ...lifter,
            ranking: {
              ...ranking,
              sets: ranking.sets.map(({ hookups, chainPairs }) => ({
                hookups: hookups.map((index) => last - index).toReversed(),
                chainPairs,
              })),
            },
          })),
        };
        expect(allocate(turned).total).toBeCloseTo(allocate(input).total, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('costs no more with a second stock, and with a stock for each rack what each rack costs alone', () => {
    fc.assert(
      fc.property(crowded(3, 4), (input) => {
        const own = {
          ...input,
          racks: input.racks.map((gear, rack) => ({
            ...gear,
            hookups: gear.hookups.map((one) => ({ ...one, pairId: `${one.pairId} of rack ${rack}` })),
          })),
        };
        const alone = input.racks.map((_, rack) => {
          const lifters = input.lifters.filter((lifter) => lifter.rack === rack);
          return lifters.length === 0 ? 0 : allocate({ ...input, lifters }).total;
        });
        const apart = allocate(own).total;
        expect(apart).toBeLessThanOrEqual(allocate(input).total + 1e-9);
        expect(apart).toBeCloseTo(
          alone.reduce((sum, total) => sum + total, 0),
          6,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('claims no more than holds for the sets that were left out of a large stock', () => {
    fc.assert(
      fc.property(crowded(3, 4), fc.integer({ min: 1, max: 6 }), (input, listed) => {
        const some = {
          ...input,
          lifters: input.lifters.map(({ ranking, ...lifter }) => {
            const misfits = ranking.sets.map((_, index) => ranking.scoreOf(index).misfit);
            const rest = misfits.slice(listed);
            return {
              ...lifter,
              ranking: {
                ...rankingOf(ranking.sets.slice(0, listed), misfits.slice(0, listed)),
                lowerBoundOf: (index: number) => misfits[index]!,
                leftOut: { count: rest.length, from: Math.min(...rest) },
              },
            };
          }),
        };
        const { total, proof } = allocate(some);
        const least = leastByTrying(input);
        expect(proof.bound).toBeLessThanOrEqual(least + 1e-9);
        expect(total).toBeGreaterThanOrEqual(least - 1e-9);
        expect(proof.setsLeftOut).toBe(input.lifters.length * (8 - listed));
        expect(proof.status === 'optimal').toBe(proof.gap <= 0.0005);
      }),
      { numRuns: 100 },
    );
  });

  it('says that nothing can hang where a lifter has no allowed set', () => {
    const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(1) };
    const sets = enumerateSetups(gear);
    const lifters = [rankingOf(sets, [0, 0.1]), rankingOf([], [])].map((ranking) => ({
      rack: 0,
      weight: 1,
      setFixed: false,
      ranking,
    }));
    const input = { racks: [gear], lifters, bandChangeMinutes: 1, outOfTime: () => false };
    for (const oneSetPull of [0, 0.5, 1])
      expect(() => allocate({ ...input, oneSetPull })).toThrow(RangeError);
  });

  it('leaves a pair that the coach hung at two racks at both, and names it', () => {
    const gear: RackGear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: pairs(2) };
    const set = { hookups: [0], chainPairs: [] };
    const lifters = [0, 1].map((rack) => ({
      rack,
      weight: 1,
      setFixed: true,
      ranking: rankingOf([set], [0.1]),
    }));
    const { chosen, clashes } = allocate({
      racks: [gear, gear],
      lifters,
      bandChangeMinutes: 1,
      oneSetPull: 0.5,
      outOfTime: () => false,
    });
    expect(chosen.map((setup) => setup.set)).toEqual([set, set]);
    expect(clashes).toEqual([{ id: 'p0', sort: 'bandPair' }]);
  });
});

function pairs(count: number): RackGear['hookups'] {
  return Array.from({ length: count }, (_, pair) => ({
    pairId: `p${pair}`,
    hookupId: 'h',
    anchorId: 'a',
    ratedLoadN: null,
    rigged: [],
    measured: null,
  }));
}

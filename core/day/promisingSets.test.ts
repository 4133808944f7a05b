import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { MisfitPlane } from './misfitPlanes.ts';
import { promisingSets } from './promisingSets.ts';
import { anyPair } from './tests/manyPieces.ts';

const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
const gearOf = (pairIds: readonly string[]): RackGear => ({
  barKg: 20,
  collarsKg: 0,
  discs: [],
  hookups: pairIds.map((pairId, i) => anyPair(pairId, `h${i}`)),
  chains: [2, 1].map((pairs, kind) => ({ chainPairId: `c${kind}`, chain, pairs })),
});
const gear = gearOf(['p0', 'p0', 'p1', 'p2']);
const every = enumerateSetups(gear);
const value = fc.integer({ min: -100, max: 100 });
const planes = fc.array(
  fc.record({
    // High enough that what hangs takes a plane below nought only now and then.
    base: fc.integer({ min: -100, max: 600 }),
    hookups: fc.array(value, { minLength: 4, maxLength: 4 }),
    chains: fc.array(value, { minLength: 2, maxLength: 2 }),
  }),
  { minLength: 1, maxLength: 3 },
);
const key = ({ hookups, chainPairs }: GearSet) => `${hookups.join()}/${chainPairs.join()}`;
/** The highest plane at a set; a squared misfit is no less than nought. */
const boundOf = ({ hookups, chainPairs }: GearSet, under: readonly MisfitPlane[]) =>
  Math.max(
    0,
    ...under.map(
      (plane) =>
        plane.base +
        hookups.reduce((sum, index) => sum + plane.hookups[index]!, 0) +
        chainPairs.reduce((sum, pairs, kind) => sum + pairs * plane.chains[kind]!, 0),
    ),
  );
const search = (under: readonly MisfitPlane[], mostSets: number, isOver = false, of = gear) =>
  promisingSets(of, { usable: [...of.hookups.keys()], mostPairs: 3, isAllowed: () => true }, under, {
    mostSets,
    outOfTime: () => isOver,
  });

it('looks at every set once where there is room and time for all, and else leaves out none below the bound that it tells', () => {
  fc.assert(
    fc.property(
      planes,
      fc.integer({ min: 1, max: every.length + 1 }),
      fc.boolean(),
      (under, mostSets, isOver) => {
        const { sets, looked, from } = search(under, mostSets, isOver);
        const seen = new Set(sets.map(key));
        expect(seen.size).toBe(sets.length);
        expect(looked).toBe(sets.length);
        const left = every.filter((set) => !seen.has(key(set)));
        for (const set of left) expect(boundOf(set, under)).toBeGreaterThanOrEqual(from - 1e-9);
        if (mostSets >= every.length && !isOver) expect([left, from]).toEqual([[], Number.POSITIVE_INFINITY]);
        else if (isOver) expect(sets.length).toBeLessThanOrEqual(Math.min(mostSets, every.length - 1));
        else expect(sets.length).toBe(mostSets);
      },
    ),
  );
});

it('tells just the least of what is left out by one plane, where all pairs can hang beside each other', () => {
  const apart = gearOf(['p0', 'p1', 'p2']);
  const all = enumerateSetups(apart);
  fc.assert(
    fc.property(planes, fc.integer({ min: 1, max: all.length - 1 }), ([under], mostSets) => {
      const { sets, from } = search([under!], mostSets, false, apart);
      const seen = new Set(sets.map(key));
      const left = all.filter((set) => !seen.has(key(set)));
      expect(from).toBe(Math.min(...left.map((set) => boundOf(set, [under!]))));
    }),
  );
});

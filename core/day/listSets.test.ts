import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { allowedGear } from './allowedSets.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearSums } from './gearSums.ts';
import { listSets } from './listSets.ts';
import { aimRows, type LifterTask } from './misfit.ts';
import { type MisfitPlane, misfitPlanes } from './misfitPlanes.ts';
import { finestStepKg, loadableMasses } from './plates.ts';
import { prescribe } from './prescribe.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch } from './SearchRules.ts';
import { manyPieces, readPair } from './tests/manyPieces.ts';

const capability = {
  ...evenCapability,
  strengthN: 2500,
  slope: 0.8,
  curvature: -0.3,
  dip: { depth: 0.1, at: 0.4, width: 0.2 },
  movedBodyKg: 50,
  range: { fromM: 0.6, toM: 1.1 },
};
const travel = { bottomM: 0.6, lockoutM: 1.1, gravityMps2: 9.81, path: [] };

const share = fc.integer({ min: 30, max: 110 }).map((percent) => percent / 100);
const aims = fc.oneof(
  fc.record({ by: fc.constant('capability' as const), bottomShare: share, lockoutShare: share }),
  fc.record({ onBar: share, atLockout: share }).map(({ onBar, atLockout }) => ({
    by: 'percent' as const,
    targets: [
      { basis: 'bar' as const, share: onBar },
      { basis: 'lockout' as const, share: atLockout },
    ],
  })),
  fc.constant({ by: 'speed' as const, fromMps: 0.5, toMps: 0.7 }),
);
/** Up to five pairs, some in two hookups, and up to two kinds of chain. */
const gears = fc
  .record({
    pullsN: fc.array(fc.array(fc.integer({ min: 20, max: 1200 }), { minLength: 1, maxLength: 2 }), {
      maxLength: 5,
    }),
    chains: fc.array(
      fc.record({ pairs: fc.integer({ min: 0, max: 3 }), massPerMetreKg: fc.integer({ min: 2, max: 20 }) }),
      { maxLength: 2 },
    ),
  })
  .map(
    ({ pullsN, chains }): RackGear => ({
      barKg: 20,
      collarsKg: 0,
      discs: [20, 10, 2.5].map((massKg) => ({ massKg, pairs: 2 })),
      hookups: pullsN.flatMap((ways, pair) =>
        ways.map((forceN, way) =>
          readPair(`p${pair}`, { zM: 0.6, forceN: forceN / 4 }, { zM: 1.1, forceN }, `h${way}`),
        ),
      ),
      chains: chains.map(({ pairs, massPerMetreKg }, kind) => ({
        chainPairId: `c${kind}`,
        pairs,
        chain: { massPerMetreKg, lengthM: 1.2, attachBelowBarM: 0.1, count: 2 },
      })),
    }),
  );
const taskOf = (aim: LifterTask['aim']): LifterTask => ({ capability, travel, aim, referenceKg: 180 });
const planesOf = (task: LifterTask, gear: RackGear) => {
  const rows = aimRows(task, finestStepKg(gear));
  const masses = loadableMasses(gear);
  const bar = { leastKg: masses[0]!, mostKg: masses.at(-1)! };
  return misfitPlanes(task, gear, rows, gearSums(task, gear, rows), [...gear.hookups.keys()], bar);
};
const valueAt = ({ base, hookups, chains }: MisfitPlane, set: GearSet) =>
  base +
  set.hookups.reduce((sum, hookup) => sum + hookups[hookup]!, 0) +
  set.chainPairs.reduce((sum, pairs, kind) => sum + pairs * chains[kind]!, 0);
const never = () => {
  throw new Error('not asked');
};
const key = (set: GearSet) => `${set.hookups.join()}/${set.chainPairs.join()}`;

describe('a plane under the squared misfit', () => {
  it('lies under that of every set with every bar', () => {
    fc.assert(
      fc.property(gears, aims, (gear, aim) => {
        const task = taskOf(aim);
        const planes = planesOf(task, gear);
        const ranking = rankSetups(task, gear);
        ranking.sets.forEach((set, index) => {
          const { misfit } = ranking.scoreOf(index);
          for (const plane of planes) expect(valueAt(plane, set)).toBeLessThanOrEqual(misfit ** 2 + 1e-9);
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe('the highest plane', () => {
  it('touches the squared misfit of what hangs where more is asked than all the gear gives, or less than none', () => {
    const gear: RackGear = {
      barKg: 20,
      collarsKg: 0,
      discs: [32, 16, 8, 4, 2, 1, 0.5, 0.25].map((massKg) => ({ massKg, pairs: 1 })),
      hookups: [readPair('p', { zM: 0.6, forceN: 0 }, { zM: 1.1, forceN: 300 }, 'h')],
      chains: [
        {
          chainPairId: 'c',
          pairs: 2,
          chain: { massPerMetreKg: 4, lengthM: 1.2, attachBelowBarM: 0.1, count: 2 },
        },
      ],
    };
    // Pair and chains make less than 50 kg at lockout, of a maximum of 180 kg.
    const asked = [
      { onBar: 0.4, lockoutShare: 1.2, set: { hookups: [0], chainPairs: [2] } },
      { onBar: 0.4, lockoutShare: 0.2, set: { hookups: [], chainPairs: [0] } },
      // Less on the bar than the bar itself.
      { onBar: 0.05, lockoutShare: 0.05, set: { hookups: [], chainPairs: [0] } },
    ];
    for (const { onBar, lockoutShare, set } of asked) {
      const targets = [
        { basis: 'bar' as const, share: onBar },
        { basis: 'lockout' as const, share: lockoutShare },
      ];
      const task = taskOf({ by: 'percent', targets });
      const ranking = rankSetups(task, gear);
      const { misfit } = ranking.scoreOf(ranking.sets.findIndex((one) => key(one) === key(set)));
      // The bar comes in steps of half a kilogram.
      const highest = Math.max(...planesOf(task, gear).map((plane) => valueAt(plane, set)));
      expect(Math.abs(misfit ** 2 - highest)).toBeLessThan(3e-6);
    }
  });
});

describe('the sets of a stock that is too large', () => {
  it('come each once, and none that was left out is better than is said', () => {
    fc.assert(
      fc.property(gears, aims, fc.integer({ min: 1, max: 30 }), (gear, aim, mostSets) => {
        const task = taskOf(aim);
        const all = rankSetups(task, gear);
        const some = rankSetups(task, gear, undefined, freeSearch, { mostSets });
        const listed = new Set(some.sets.map(key));
        expect(listed.size).toBe(some.sets.length);
        const leftOut = all.sets.flatMap((set, index) =>
          listed.has(key(set)) ? [] : [all.scoreOf(index).misfit],
        );
        // A pair that never pulls is not counted as a set to try, here as there.
        if (some.leftOut === undefined) expect(leftOut).toEqual([]);
        else {
          expect(some.leftOut.count).toBe(leftOut.length);
          for (const misfit of leftOut) expect(some.leftOut.from).toBeLessThanOrEqual(misfit + 1e-6);
        }
        // What is listed has the misfit that it has among all; a speed's bar is searched to a fifth of a tie.
        const near = aim.by === 'speed' ? 1e-4 : 1e-9;
        const misfits = new Map(all.sets.map((set, index) => [key(set), all.scoreOf(index).misfit]));
        some.sets.forEach((set, index) => {
          expect(Math.abs(some.scoreOf(index).misfit - misfits.get(key(set))!)).toBeLessThanOrEqual(near);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('are all there, in the order of their enumeration, where there is room for all', () => {
    fc.assert(
      fc.property(gears, (gear) => {
        const allowed = allowedGear(gear, taskOf({ by: 'speed', fromMps: 0.5, toMps: 0.6 }), freeSearch, 20);
        const sets = enumerateSetups(gear, allowed.usable, allowed.mostPairs);
        const listed = listSets(gear, allowed, never, { mostSets: sets.length });
        expect(listed.sets).toEqual(sets);
        expect(listed.leftOut).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  it('are proven to hold none better where one pair meets both percentages, among sixty billion sets', () => {
    const gear = manyPieces(60, 6);
    const forceN = gear.hookups[26]!.measured!.verticalAt.at(-1)!.forceN;
    const targets = [
      { basis: 'bar' as const, share: 0.5 },
      { basis: 'lockout' as const, share: 0.5 + forceN / 9.81 / 180 },
    ];
    const { best, proof } = prescribe(taskOf({ by: 'percent', targets }), gear);
    expect(best).toMatchObject({ set: { hookups: [26], chainPairs: [0, 0, 0, 0, 0, 0] }, barKg: 90 });
    expect(proof.setsLeftOut).toBeGreaterThan(6e10);
    expect(proof.gap).toBeLessThanOrEqual(0.0005);
    // It is likely, and so found too where none may be grown.
    const likely = rankSetups(taskOf({ by: 'percent', targets }), gear, undefined, freeSearch, {
      mostSets: 1,
    });
    expect(likely.sets[likely.fromBest()()!.index]).toEqual(best.set);
  });

  it('are answered with a bound that says how much is not known, whatever the aim and the clock', () => {
    fc.assert(
      fc.property(aims, fc.nat(20), (aim, questions) => {
        let left = questions;
        const { best, proof } = prescribe(taskOf(aim), manyPieces(60, 6), { outOfTime: () => left-- <= 0 });
        expect(proof.bound).toBeLessThanOrEqual(best.misfit);
        expect(proof.bound + proof.gap).toBeCloseTo(best.misfit, 9);
        expect(best.set.hookups.length).toBeLessThanOrEqual(3);
      }),
      { numRuns: 6 },
    );
  });
});

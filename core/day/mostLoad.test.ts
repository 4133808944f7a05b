import { assert, constant, constantFrom, double, oneof, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileLoad } from '#core/load/compileLoad.ts';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import type { Aim } from './Aim.ts';
import { barsFrom } from './bars.ts';
import { enumerateSetups } from './enumerateSetups.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import type { LifterTask } from './misfit.ts';
import { roomForBar } from './mostLoad.ts';
import { rankSetups } from './rankSetups.ts';
import { freeSearch, noBounds } from './SearchRules.ts';
import { readPair } from './tests/manyPieces.ts';

const travel = { bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };
const gear: RackGear = {
  barKg: 20,
  collarsKg: 5,
  discs: [20, 10, 5, 2.5].map((massKg) => ({ massKg, pairs: massKg === 20 ? 4 : 1 })),
  chains: [
    { chainPairId: 'c', chain: { massPerMetreKg: 8, lengthM: 1.6, attachBelowBarM: 0, count: 2 }, pairs: 2 },
  ],
  hookups: [
    readPair('p0', { zM: 0.8, forceN: 0 }, { zM: 1.5, forceN: 350 }),
    readPair('p1', { zM: 0.6, forceN: 0 }, { zM: 1.5, forceN: 700 }),
  ],
};

const share = double({ min: 0.4, max: 0.9, noNaN: true });
const aims = [
  share.map((bottomShare): Aim => ({ by: 'capability', bottomShare, lockoutShare: bottomShare })),
  share.map((lockout): Aim => ({ by: 'percent', targets: [{ basis: 'lockout', share: lockout }] })),
  constant<Aim>({ by: 'speed', fromMps: 0.5, toMps: 0.6 }),
] as const;
const limits = record({
  barKg: constantFrom(40, 90, 140, Number.POSITIVE_INFINITY),
  lockoutKg: constantFrom(60, 110, 170, Number.POSITIVE_INFINITY),
});
/** Less than the empty bar: nothing but that is left. */
const hardlyAny = record({ barKg: constantFrom(20, 90), lockoutKg: constantFrom(20, 110) });
const task = (aim: Aim): LifterTask => ({ capability: squatCapability, travel, aim, referenceKg: 200 });

/** What is held at lockout by the load of the setup itself. */
function atLockoutKg(set: GearSet, barKg: number): number {
  return compileLoad(gearLoad(gear, set, travel, barKg)).totalN(travel.lockoutM) / travel.gravityMps2;
}

describe('a lifter who may hold so much and no more', () => {
  it.each([0, 1, 2] as const)(
    'is never proposed more, on the bar or at lockout, by any aim or bound (%i)',
    (of) => {
      assert(
        property(
          aims[of],
          oneof(limits, hardlyAny),
          constantFrom(0, 0.6),
          constantFrom(1, 1.25),
          (aim, most, leastBarShare, heaviestStep) => {
            const rules = { ...freeSearch, bounds: { ...noBounds, leastBarShare } };
            const held = { ...task(aim), most: { ...most, heaviestStep } };
            const { sets, fromBest } = rankSetups(held, gear, undefined, rules);
            const next = fromBest();
            const emptyKg = 25 * heaviestStep;
            for (let one = next(); one !== null; one = next()) {
              const stepKg = one.barKg * heaviestStep;
              expect(stepKg).toBeLessThanOrEqual(Math.max(emptyKg, most.barKg));
              const heldKg = atLockoutKg(sets[one.index]!, stepKg);
              expect(heldKg).toBeLessThanOrEqual(Math.max(emptyKg, most.lockoutKg) + 1e-6);
            }
          },
        ),
        { numRuns: of === 2 ? 5 : 40 },
      );
    },
  );

  it('gets the best of all that remains: as good as the best of every set and bar within the limits, tried one by one', () => {
    assert(
      property(aims[1], limits, (aim, most) => {
        const target = aim.by === 'percent' ? aim.targets[0]!.share * 200 : 0;
        const held = enumerateSetups(gear, [0, 1], 3).flatMap((set) =>
          barsFrom(0, gear).flatMap((barKg) => {
            const kg = atLockoutKg(set, barKg);
            const isWithin = barKg <= Math.max(25, most.barKg) && kg <= Math.max(25, most.lockoutKg) + 1e-6;
            return isWithin ? [Math.abs(kg - target)] : [];
          }),
        );
        const { sets, scoreOf } = rankSetups({ ...task(aim), most: { ...most, heaviestStep: 1 } }, gear);
        const offs = sets.map((set, index) => Math.abs(atLockoutKg(set, scoreOf(index).barKg) - target));
        expect(Math.min(...offs)).toBeCloseTo(Math.min(...held), 6);
      }),
      { numRuns: 30 },
    );
  });

  it('is held by the heaviest step of the work, rounded to the discs as it is', () => {
    // Bars come in steps of 5 kg, so that a step of 1.1 of them may be loaded 2.5 kg heavier: 95 kg keep to 111, 100 do not.
    const most = { barKg: 111, lockoutKg: Number.POSITIVE_INFINITY, heaviestStep: 1.1 };
    const aim: Aim = { by: 'percent', targets: [{ basis: 'bar', share: 0.9 }] };
    const heaviest = (held: typeof most) => {
      const { sets, scoreOf } = rankSetups({ ...task(aim), most: held }, gear);
      return new Set([...sets.keys()].map((index) => scoreOf(index).barKg));
    };
    expect(heaviest(most)).toEqual(new Set([95]));
    // The bar itself is loaded as it is: 110 kg are no more than 111.
    expect(heaviest({ ...most, heaviestStep: 1 })).toEqual(new Set([110]));
  });

  it('keeps a bar that the coach fixed', () => {
    const most = { barKg: 60, lockoutKg: 80, heaviestStep: 1 };
    const aim: Aim = { by: 'percent', targets: [{ basis: 'bar', share: 0.9 }] };
    const { fromBest } = rankSetups({ ...task(aim), most }, gear, { barKg: 120, set: null });
    expect(fromBest()()!.barKg).toBe(120);
  });
});

it('leaves room for a heavier step to be rounded up by half of what the lightest discs come to', () => {
  // Two discs of 1.25 kg are the finest step: a bar of 110 / 1.1 kg is told as far as 1.25 kg below it.
  const gear: RackGear = {
    barKg: 20,
    collarsKg: 0,
    discs: [{ massKg: 1.25, pairs: 2 }],
    chains: [],
    hookups: [],
  };
  const travel = { bottomM: 0.5, lockoutM: 1, gravityMps2: 10, path: [] };
  const most = { barKg: 110, lockoutKg: Number.POSITIVE_INFINITY, heaviestStep: 1.1 };
  expect(roomForBar(most, travel, gear)({ hookups: [], chainPairs: [] })).toBeCloseTo(98.75, 9);
});

it('takes off what bands and chains weigh on the bar at lockout, to the last newton', () => {
  const travel = { bottomM: 0.5, lockoutM: 1.5, gravityMps2: 10, path: [] };
  const hookups = [100, 300].map((forceN, i) =>
    readPair(`p${i}`, { zM: 0.5, forceN: 0 }, { zM: 1.5, forceN }),
  );
  const chain = { massPerMetreKg: 8, lengthM: 1, attachBelowBarM: 0, count: 2 };
  const hung: RackGear = { ...gear, hookups, chains: [{ chainPairId: 'c', pairs: 3, chain }] };
  const most = { barKg: 200, lockoutKg: 200, heaviestStep: 1 };
  // 10 and 30 kg of bands, and twice two chains of 8 kg, all off the floor.
  expect(roomForBar(most, travel, hung)({ hookups: [0, 1], chainPairs: [2] })).toBeCloseTo(128, 9);
});

import { describe, expect, test } from 'vitest';
import type { Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import { mostLoadOf } from './restricted.ts';
import { solveDay } from './solveDay.ts';

/** The second lifter's only best is 200 kg, and the day is the first of March. */
const BEST_KG = 200;
const held = (changed: Partial<Restriction>): Restriction => ({
  id: 'held',
  lifterId: 'tall',
  lift: 'squat',
  leastBoxM: null,
  mostShare: null,
  shareOf: 'bar',
  fromOn: '2026-02-01',
  untilOn: '2026-03-01',
  note: 'Nobody else reads this.',
  ...changed,
});

/** Both lifters of the day with the second held so: [the first, the second]. */
function dayWith(changed: Partial<Restriction>, place: Partial<Place> = {}) {
  const records = { ...twoLifters(), restriction: [held(changed)] };
  const day = structuredClone(records.day[0]!);
  Object.assign(day.groups[0]!.places[1]!, place);
  const plan = solveDay(records, day);
  return { records, plan, places: plan.groups[0]!.places };
}

/** What is held at lockout in the heaviest step, by the load of the very setup. */
function atLockoutKg({ records, places }: ReturnType<typeof dayWith>): number {
  const { set, blocks, heights } = places[1]!.solved!;
  const setup = {
    rackId: 'rack',
    start: places[1]!.start,
    barKg: Math.max(...blocks.map(({ barKg }) => barKg)),
    bands: set.bands,
    chains: [],
  };
  const { load } = assembleLoad(records, { lifterId: 'tall', lift: 'squat', setup, on: '2026-03-01' });
  return compileLoad(load).totalN(heights.lockoutM) / load.gravityMps2;
}

const saidOf = ({ places }: ReturnType<typeof dayWith>) =>
  places.map(({ solved }) => solved?.cautions.filter(({ code }) => code === 'restricted') ?? []);

const work = (...shares: number[]) => ({
  blocks: shares.map((shareOfAim) => ({ sets: 1, reps: 1, restSeconds: 60, shareOfAim })),
});

describe('a lifter held to a share of the maximum', () => {
  test('is given no more on the bar, nor with bands at lockout, and the plan says so for that lifter alone', () => {
    // Without it the day asks for 100 kg on the bar and 150 kg at lockout.
    const free = dayWith({ mostShare: 0.4, untilOn: '2026-02-28' });
    expect(free.places[1]!.solved!.barKg).toBeGreaterThan(0.45 * BEST_KG);
    expect(atLockoutKg(free)).toBeGreaterThan(0.6 * BEST_KG);
    expect(saidOf(free)).toEqual([[], []]);

    const bar = dayWith({ mostShare: 0.4 });
    expect(bar.places[1]!.solved!.barKg).toBeLessThanOrEqual(0.4 * BEST_KG);
    const lockout = dayWith({ mostShare: 0.5, shareOf: 'lockout' });
    expect(atLockoutKg(lockout)).toBeLessThanOrEqual(0.5 * BEST_KG + 1e-6);
    for (const one of [bar, lockout]) {
      const [others, own] = saidOf(one);
      expect(others).toEqual([]);
      expect(own).toHaveLength(1);
      expect(own![0]).toMatchObject({ untilOn: '2026-03-01', isBroken: false });
      expect(JSON.stringify(one.plan)).not.toContain('Nobody else');
    }
  });

  test('keeps what the coach sets by hand, and is told that it is more', () => {
    const byCoach = { barKg: 120, bands: null, chains: null };
    const day = dayWith({ mostShare: 0.5 }, { byCoach });
    expect(day.places[1]!.solved!.barKg).toBe(120);
    expect(saidOf(day)[1]![0]).toMatchObject({ mostKg: 0.5 * BEST_KG, isBroken: true });
    const banded = { ...byCoach, bands: [{ bandPairId: 'heavy', hookupId: 'doubled' }] };
    const isBroken = (changed: Partial<Restriction>) =>
      saidOf(dayWith(changed, { byCoach: banded })).flatMap((own) =>
        own.map((one) => one.code === 'restricted' && one.isBroken),
      );
    expect([0.6, 0.599].flatMap((mostShare) => isBroken({ mostShare }))).toEqual([false, true]);
    // With bands it is the load at lockout that counts.
    const atLockout = atLockoutKg(dayWith({ mostShare: 1 }, { byCoach: banded })) / BEST_KG;
    expect(atLockout).toBeGreaterThan(0.61);
    expect(isBroken({ mostShare: atLockout + 0.001, shareOf: 'lockout' })).toEqual([false]);
    expect(isBroken({ mostShare: atLockout - 0.001, shareOf: 'lockout' })).toEqual([true]);
  });

  test('by several restrictions is held to the least of each, for the heaviest step of the work', () => {
    const both = [
      held({ mostShare: 0.5 }),
      held({ mostShare: 0.4 }),
      held({ mostShare: 0.7, shareOf: 'lockout' }),
      held({ leastBoxM: 0.4 }),
    ];
    expect(mostLoadOf(both, 200, work(0.8, 1.1))).toEqual({ barKg: 80, lockoutKg: 140, heaviestStep: 1.1 });
    expect(mostLoadOf(both, 200, work(0.8))).toMatchObject({ heaviestStep: 1 });
    // The same share of bar and of lockout is a limit too.
    const alike = [held({ mostShare: 0.5 }), held({ mostShare: 0.5, shareOf: 'lockout' })];
    expect(mostLoadOf(alike, 200, work(1))).toMatchObject({ barKg: 100, lockoutKg: 100 });
    expect(mostLoadOf([held({ leastBoxM: 0.4 })], 200, work(1))).toBeUndefined();
  });

  test('of whom even the empty bar is more is told to take a lighter bar', () => {
    const { places } = dayWith({ mostShare: 0.05 });
    expect(places[1]!.solved).toBeNull();
    expect(places[1]!.problem).toBe(
      'Restricted to 10 kg, and the empty bar with its collars is 20 kg: take a lighter bar.',
    );
    expect(places[0]!.solved).not.toBeNull();
  });
});

const onBox = (heightM: number) =>
  dayWith({ leastBoxM: 0.425, untilOn: null }, { start: { way: 'box', heightM } }).places[1]!.problem;

describe('a lifter held to a box', () => {
  test.each<[string, Start, boolean]>([
    ['lower', { way: 'box', heightM: 0.38 }, false],
    ['as high', { way: 'box', heightM: 0.4 }, true],
    ['higher', { way: 'box', heightM: 0.45 }, true],
  ])('may not sit on one that is lower: %s', (_, start, may) => {
    const { places } = dayWith({ leastBoxM: 0.4 }, { start });
    expect(places[1]!.problem === null).toBe(may);
    if (!may)
      expect(places[1]!.problem).toBe(
        'Restricted until 2026-03-01: no deeper than on a box of 40 cm, and this start is deeper. Give this lifter a box of at least 40 cm.',
      );
  });

  test('may sit on one that is lower by less than anybody measures', () => {
    expect(onBox(0.421)).toBeNull();
    expect(onBox(0.419)).toMatch(/^Restricted until further notice: no deeper than on a box of 42\.5 cm,/);
  });

  test('may squat freely, or from pins, only where the bar stays as high as on that box', () => {
    // The tallest box of all lies above the free bottom, the lowest far below it.
    expect(dayWith({ leastBoxM: 0.6 }).places[1]!.problem).toContain('Restricted until 2026-03-01');
    expect(dayWith({ leastBoxM: 0.2 }).places[1]!.problem).toBeNull();
    const { lockoutM } = dayWith({}).places[1]!.solved!.heights;
    const pins = { way: 'pins' as const, heightM: lockoutM - 0.1 };
    expect(dayWith({ leastBoxM: 0.6 }, { start: pins }).places[1]!.problem).toBeNull();
  });

  test('is held to nothing before the first day and after the last', () => {
    for (const dates of [{ fromOn: '2026-03-02' }, { untilOn: '2026-02-28' }])
      expect(dayWith({ leastBoxM: 0.6, ...dates }).places[1]!.problem).toBeNull();
  });
});

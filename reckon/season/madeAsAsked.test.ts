import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { method } from '#contract/records/method.ts';
import type { HeldTo } from '#contract/season/heldTo.ts';
import { type SeasonAsk, type SetByHand, seasonAsk } from '#contract/season/seasonPlan.ts';
import { equippedWithBands } from '#contract/season/shipped/equippedWithBands.ts';
import { madeAsAsked } from './madeAsAsked.ts';
import { planSeason } from './planSeason.ts';

const G = 9.80665;
const FROM = dayNumber('2026-11-30');
const equipped = method.parse(equippedWithBands);
const starts = equipped.phases.flatMap(({ days }) =>
  days.flatMap(({ groups }) =>
    groups.flatMap(({ lift, variants }) => variants.map(({ start }) => ({ lift, start }))),
  ),
);

const on = (day: number) => dateOfDay(FROM + day);
const days = fc.integer({ min: 0, max: 200 });
const closed = fc.record({
  from: fc.integer({ min: 10, max: 20 }),
  length: fc.integer({ min: 3, max: 9 }),
  why: fc.constantFrom('ill', 'away'),
});
const held = fc.record({ from: days, length: days, of: fc.constantFrom(...starts) });
const set = fc.record({
  day: days,
  askedId: fc.constantFrom('speed-squat', 'speed-deadlift'),
  isLeftOut: fc.boolean(),
});
const lifter = fc.record({
  first: fc.integer({ min: 0, max: 10 }),
  meets: fc.constantFrom([131], [138], [90, 131]),
  closed: fc.array(closed, { maxLength: 1 }),
  held: fc.array(held, { maxLength: 1 }),
  byHand: fc.array(set, { maxLength: 3 }),
});

test('whoever was planned before, a plan that shares weeks with others is the plan made alone', () => {
  fc.assert(
    fc.property(fc.array(lifter, { minLength: 2, maxLength: 4 }), (lifters) => {
      const asAsked = madeAsAsked();
      for (const one of lifters) {
        const [ask, byHand] = [askOf(one), handOf(one)];
        expect(planSeason(equipped, ask, G, byHand, asAsked)).toEqual(planSeason(equipped, ask, G, byHand));
      }
    }),
    { numRuns: 30 },
  );
});

type Lifter = typeof lifter extends fc.Arbitrary<infer Of> ? Of : never;

function askOf({ first, meets, closed: away, held: keptTo }: Lifter): SeasonAsk {
  return seasonAsk.parse({
    from: on(first),
    meets: meets.map((day) => ({ title: 'Tollbridge Open', date: on(day) })),
    closed: away.map(({ from, length, why }) => ({ from: on(from), until: on(from + length), why })),
    held: keptTo.map(
      ({ from, length, of: { lift, start } }): HeldTo => ({
        lift,
        from: on(from),
        until: on(from + length),
        tooDeep: [start],
        leastBoxM: null,
        mostShare: 0.7,
        shareOf: 'lockout',
      }),
    ),
  });
}

function handOf({ byHand }: Lifter): SetByHand[] {
  const aim = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.6 }] };
  return byHand.map(({ day, askedId, isLeftOut }) => ({
    date: on(day),
    askedId,
    instead: isLeftOut ? null : { start: null, aim, blocks: null },
  }));
}

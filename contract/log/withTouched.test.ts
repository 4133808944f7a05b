import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { type PartOfLog, withTouched } from './withTouched.ts';

/** Few values of each, so that many sets are alike in some of them. */
const set = fc.record({
  id: fc.integer({ min: 0, max: 12 }).map((n) => `set-${n}`),
  lifterId: fc.constantFrom('one', 'two'),
  lift: fc.constantFrom('squat', 'bench'),
  dayId: fc.constantFrom('monday', null),
  doneOn: fc.constantFrom('2026-01-01', '2026-01-02', '2026-01-03'),
  order: fc.integer({ min: 1, max: 3 }),
}) as fc.Arbitrary<LoggedSet>;
const log = fc.uniqueArray(set, { selector: ({ id }) => id });
const part = fc.record(
  {
    lifterId: fc.constantFrom('one', 'two'),
    lift: fc.constantFrom('squat', 'bench'),
    dayId: fc.constant('monday'),
    from: fc.constantFrom('2026-01-01', '2026-01-02'),
    to: fc.constantFrom('2026-01-02', '2026-01-03'),
  },
  { requiredKeys: [] },
);
const struckAt = '2026-01-04T00:00:00.000Z';

/** What the server answers, told another way: each day's sets by their places in the day. */
function asAnswered(all: readonly LoggedSet[], asked: PartOfLog) {
  const { from = '', to = '9', ...same } = asked;
  const isAsked = (one: LoggedSet) =>
    one.doneOn >= from &&
    one.doneOn <= to &&
    Object.entries(same).every(([name, value]) => one[name as 'lift'] === value);
  return all.filter(isAsked).toSorted((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1));
}

test('a part of the log that takes in what was logged and struck reads as if it were asked for again', () =>
  fc.assert(
    fc.property(log, log, part, fc.boolean(), (before, given, asked, strikes) => {
      // A set never changes but by being struck.
      const known = new Map(before.map((one) => [one.id, one]));
      const touched = given.map((one) => ({
        ...(known.get(one.id) ?? one),
        struckAt: strikes ? struckAt : null,
      }));
      const after = new Map([...before, ...touched].map((one) => [one.id, one]));
      const held = asAnswered(before, asked);
      expect(withTouched(held, asked, touched)).toEqual(asAnswered([...after.values()], asked));
    }),
  ));

test('a part that none of the touched sets is in stays the same list', () => {
  const [one, other] = [{ lifterId: 'one' }, { lifterId: 'two' }] as LoggedSet[];
  const held = [one!];
  expect(withTouched(held, { lifterId: 'one' }, [other!])).toBe(held);
});

function placeOf({ doneOn, order, id }: LoggedSet): string {
  return `${doneOn} ${order} ${id}`;
}

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { bareDay, freeWeekday, onWeekday, withDayOn } from './dayList.ts';

const weekday = fc.integer({ min: 1, max: 7 });
/** Training days as a method has them: Monday first, one a day of the week, each with work of its own. */
const days = fc
  .uniqueArray(weekday, { minLength: 1, maxLength: 7 })
  .map((taken) => taken.toSorted(byNumber).map((on) => ({ ...bareDay, weekday: on, title: `Day ${on}` })));

test('a day goes to any day of the week, and no other moves but the one that was there, which takes its place', () => {
  fc.assert(
    fc.property(days, fc.nat(), weekday, (before, pick, to) => {
      const at = pick % before.length;
      const { title, weekday: from } = before[at]!;
      const after = onWeekday(before, at, to);
      const there = before.find((day) => day.weekday === to);
      const meant = new Map(before.map((day) => [day.title, day.weekday]));
      if (there) meant.set(there.title, from);
      meant.set(title, to);
      expect(new Map(after.map((day) => [day.title, day.weekday]))).toEqual(meant);
      const inWeek = after.map((day) => day.weekday);
      expect(inWeek).toEqual(inWeek.toSorted(byNumber));
    }),
  );
});

test('the free day is the next one after the day in view, around the week; a full week has none', () => {
  expect(freeWeekday(on(1, 2, 4), 1)).toBe(3);
  expect(freeWeekday(on(5, 6, 7), 5)).toBe(1);
  expect(freeWeekday([])).toBe(1);
  expect(freeWeekday(on(1, 2, 3, 4, 5, 6, 7), 3)).toBeNull();
});

test('a copied day does the same work in its place in the week, under a title of its own', () => {
  const before = shippedMethods[0]!.phases[1]!.days;
  const [first] = before;
  const free = freeWeekday(before, first!.weekday)!;
  const after = withDayOn(before, first!, free);
  const copy = after.find((day) => day.weekday === free)!;
  expect(copy).toEqual({ ...first, weekday: free, title: copy.title });
  expect(before.map(({ title }) => title)).not.toContain(copy.title);
  expect(after.filter((day) => day !== copy)).toEqual(before);
});

function on(...taken: number[]): { weekday: number }[] {
  return taken.map((weekdayTaken) => ({ weekday: weekdayTaken }));
}

function byNumber(a: number, b: number): number {
  return a - b;
}

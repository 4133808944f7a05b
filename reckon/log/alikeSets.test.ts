import { array, assert, constantFrom, property, record } from 'fast-check';
import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { alikeSets } from './alikeSets.ts';
import { lastSessions, sessionsOf } from './sessionsOf.ts';

const day = '2026-06-01';
const squat = (id: string, barKg: number, more: Partial<ReturnType<typeof loggedSquat>> = {}) => ({
  ...loggedSquat(id, day, barKg),
  ...more,
});
const box = (id: string, doneOn: string, heightM: number) =>
  loggedSquat(id, doneOn, 80, { with: { start: { way: 'box', heightM } } });
const ids = (sessions: ReturnType<typeof sessionsOf>) =>
  sessions.map((session) => session.sets.map(({ id }) => id));
/** Some sets of a day: bar, reps asked and made, struck or not. */
const someSets = array(
  record({
    barKg: constantFrom(60, 70),
    reps: constantFrom(2, 3),
    made: constantFrom(0, 2),
    struckAt: constantFrom(null, '2026-06-01T10:00:00Z'),
  }),
  { maxLength: 12 },
).map((all) => all.map(({ barKg, ...more }, i) => squat(`set ${i}`, barKg, { ...more, order: i + 1 })));

test('groups of alike sets are the sets themselves in their order, and two that touch are never alike', () => {
  assert(
    property(someSets, (sets) => {
      const groups = alikeSets(sets);
      expect(groups.flat()).toEqual(sets);
      groups.forEach((group, i) => {
        const [first] = group;
        const isAlike = (one: (typeof sets)[number] | undefined) =>
          one?.setup.barKg === first?.setup.barKg &&
          one?.reps === first?.reps &&
          (one?.struckAt === null) === (first?.struckAt === null);
        expect(group.every(isAlike)).toBe(true);
        expect(isAlike(groups[i + 1]?.[0])).toBe(false);
      });
    }),
  );
});

test('a miss stands among the sets that it belongs to; a struck set never does', () => {
  const struckAt = '2026-06-01T10:00:00Z';
  const sets = [
    squat('a', 60, { reps: 3, made: 3 }),
    squat('b', 60, { reps: 3, made: 2 }),
    squat('c', 60, { reps: 3, made: 3, struckAt }),
  ];
  expect(alikeSets(sets).map((group) => group.map(({ id }) => id))).toEqual([['a', 'b'], ['c']]);
});

test('a session is everything of one setup and day that counts, the newest first, the last time of a setup its newest', () => {
  const sets = [
    box('old', '2026-05-01', 0.33),
    box('low', '2026-06-01', 0.33),
    box('high', '2026-06-01', 0.4),
    box('low again', '2026-06-01', 0.33),
    { ...box('struck', '2026-07-01', 0.33), struckAt: '2026-07-01T10:00:00Z' },
  ];
  const sessions = sessionsOf(sets);
  expect(ids(sessions)).toEqual([['low', 'low again'], ['high'], ['old']]);
  expect(ids(lastSessions(sessions))).toEqual([['low', 'low again'], ['high']]);
});

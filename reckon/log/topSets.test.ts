import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { topSets } from './topSets.ts';

const set = (id: string, barKg: number, made: number) => ({
  ...loggedSquat(id, '2026-06-01', barKg),
  reps: 2,
  made,
});
const idsOf = (sets: ReturnType<typeof set>[]) => topSets(sets).map(({ id }) => id);

test('the top of a day is its heaviest bar of which a rep was made, every set with it; of a day of misses the heaviest', () => {
  expect(idsOf([set('a', 80, 2), set('b', 100, 1), set('c', 100, 2), set('d', 105, 0)])).toEqual(['b', 'c']);
  expect(idsOf([set('a', 100, 0), set('b', 105, 0)])).toEqual(['b']);
});

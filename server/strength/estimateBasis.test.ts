import { expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { newestBasis } from './estimateBasis.ts';

test('whoever waits comes between two lifters whose marks are worked out', async () => {
  const { store } = await testApp(smallClub());
  const club = smallClub();
  const lifters = Array.from({ length: 20 }, (_, i) => ({
    ...club.lifter[0]!,
    id: `of-the-crowd-${i}`,
    name: `Lifter ${i}`,
  }));
  await store.importRecords({ ...club, lifter: [...club.lifter, ...lifters] });
  const basis = newestBasis(store);
  const { marksOf } = await basis();
  let turns = 0;
  let turn = setImmediate(function others() {
    turns += 1;
    turn = setImmediate(others);
  });
  for (const { id } of lifters) await marksOf(id);
  expect(turns).toBeGreaterThanOrEqual(lifters.length);
  const before = turns;
  for (const { id } of lifters) await (await basis()).marksOf(id);
  expect(turns).toBe(before);
  clearImmediate(turn);
});

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ClubStore } from '../ClubStore.ts';
import { databases, type TestClub } from './databases.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

describe.each(databases)('on $name a set', ({ open }) => {
  let club: TestClub;
  let store: ClubStore;
  beforeEach(async () => {
    club = await open();
    ({ store } = club);
    await store.importRecords(smallClub());
  });
  afterEach(() => club.dispose());

  const mine = squatSet({ id: 'mine' });

  test('that is sent again with its id is the same set, at once or later, alone or beside a new one', async () => {
    const [first, second] = await Promise.all([store.logSets([mine]), store.logSets([mine])]);
    expect(second).toEqual(first);
    const both = await store.logSets([mine, squatSet({ id: 'other' }), squatSet()]);
    expect(both.sets).toMatchObject([first.sets[0]!, { id: 'other', order: 2 }, { order: 3 }]);
    expect(await store.loggedSets()).toHaveLength(3);
    // The undo of what came beside it leaves it alone.
    await store.undo(both.seq);
    const counts = (await store.loggedSets()).filter(({ struckAt }) => struckAt === null);
    expect(counts).toEqual(first.sets);
  });

  test('that was struck meanwhile and is sent again stays struck', async () => {
    const { seq, sets } = await store.logSets([mine]);
    await store.undo(seq);
    const again = await store.logSets([mine]);
    expect(again).toMatchObject({ seq, sets: [{ id: sets[0]!.id, struckAt: expect.any(String) }] });
    expect(await store.latestSeq()).toBe(seq + 1);
  });

  test('with the id of another set is refused, and with it all that came along', async () => {
    await store.logSets([mine]);
    const others = [{ ...mine, made: 1 }, { ...mine, order: 7 }, squatSet({ id: 'mine', note: 'x' })];
    for (const other of others) {
      await expect(store.logSets([squatSet(), other])).rejects.toMatchObject({
        reason: 'conflict',
        field: 'sets[1].id',
      });
    }
    await expect(store.logSets([squatSet({ id: 'a' }), squatSet({ id: 'a' })])).rejects.toMatchObject({
      reason: 'invalid',
      field: 'sets[1].id',
    });
    expect(await store.loggedSets()).toHaveLength(1);
  });

  test('that corrects another and is sent again corrects it once', async () => {
    await store.logSets([mine]);
    const correction = { id: 'mine', set: squatSet({ id: 'corrected', made: 1 }) };
    const first = await store.correctSets([correction]);
    expect(await store.correctSets([correction])).toEqual(first);
    expect(await store.loggedSets()).toMatchObject([{ id: 'corrected', struckAt: null }, { id: 'mine' }]);
    const other = { id: 'corrected', set: mine };
    await expect(store.correctSets([{ ...other, set: { ...mine, made: 0 } }])).rejects.toMatchObject({
      reason: 'conflict',
    });
  });
});

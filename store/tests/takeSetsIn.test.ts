import type { Transaction } from 'kysely';
import { afterEach, beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import type { ClubStore, FileSet } from '../ClubStore.ts';
import type { Tables } from '../schema.ts';
import { takeSetsIn } from '../takeSetsIn.ts';
import { databases, type TestClub } from './databases.ts';
import { fileSets } from './fileSets.ts';
import { tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';

describe.each(databases)('a file of sets on $name', ({ open }) => {
  let store: ClubStore;
  let dispose: TestClub['dispose'];
  beforeEach(async () => {
    ({ store, dispose } = await open());
    await store.importRecords(smallClub());
  });
  afterEach(() => dispose());

  test('is one change that is told of, holds each set as it was given and is undone whole', async () => {
    const heard: number[] = [];
    store.onChange((seq) => heard.push(seq));
    const given = fileSets(1001);
    const { seq } = await store.takeSetsIn(given);
    expect(heard).toEqual([seq]);
    const kept = await store.loggedSets();
    expect(kept).toMatchObject(given.toSorted(byDay));
    expect(new Set(kept.map(({ id }) => id)).size).toBe(given.length);
    await store.undo(seq);
    expect((await store.loggedSets()).filter(({ struckAt }) => struckAt === null)).toEqual([]);
  });

  test.each<[what: string, wrong: Partial<FileSet>, field: string]>([
    ['a lifter who is not there', { lifterId: 'nobody' }, 'sets[2].lifterId'],
    ['a day that is still to come', { doneOn: '9000-01-01' }, 'sets[2].doneOn'],
    ['a set that cannot be', { reps: 0 }, 'sets[2].reps'],
  ])('is refused whole for %s, and the next one is taken in alone', async (_what, wrong, field) => {
    const given = fileSets(4);
    const { seq } = await store.standing();
    const bad = given.with(2, { ...given[2]!, ...wrong });
    await expect(store.takeSetsIn(bad)).rejects.toMatchObject({ field });
    expect(await store.loggedSets()).toEqual([]);
    expect((await store.standing()).seq).toBe(seq);
    await store.takeSetsIn(given.slice(0, 2));
    expect(await store.loggedSets()).toHaveLength(2);
  });

  test('two at a time are two changes that each hold their own', async () => {
    const years = ['2022-01-01', '2024-01-01'];
    const taken = await Promise.all(years.map((from) => store.takeSetsIn(fileSets(300, from))));
    await store.undo(taken[0]!.seq);
    const counts = (await store.loggedSets()).filter(({ struckAt }) => struckAt === null);
    expect(counts).toHaveLength(300);
    expect(counts[0]!.doneOn).toBe('2024-01-01');
  });
});

test('a file of sets asks the database as often while others wait, however many sets it has, where there is one connection', async () => {
  const { store, database, dispose } = await databases[0]!.open();
  onTestFinished(dispose);
  expect(database.isOneConnection).toBe(true);
  await store.importRecords(smallClub());
  let asked = 0;
  const plugin: Parameters<Transaction<Tables>['withPlugin']>[0] = {
    transformQuery: ({ node }) => node,
    async transformResult({ result }) {
      asked += 1;
      return result;
    },
  };
  async function askedWhileOthersWait(sets: FileSet[]): Promise<number> {
    asked = 0;
    const write: typeof database.write = (clubId, work) =>
      database.write(clubId, (trx) => work(trx.withPlugin(plugin)));
    await takeSetsIn({ ...database, write }, { clubId: store.clubId, who: tester }, sets);
    return asked;
  }
  const ofTwo = await askedWhileOthersWait(fileSets(2));
  expect(ofTwo).toBeGreaterThan(0);
  expect(await askedWhileOthersWait(fileSets(2000))).toBe(ofTwo);
});

function byDay(a: FileSet, b: FileSet): number {
  return a.doneOn.localeCompare(b.doneOn) || a.order - b.order;
}

import { beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

/** What the disk does when it is told to bring a file's data to safety: by itself the real one's work. */
const disk = vi.hoisted(() => ({
  answer: (real: () => void, _done: (error: Error | null) => void) => real(),
}));
vi.mock(import('node:fs'), async (original) => {
  const fs = await original();
  const fdatasync = (at: number, done: (error: Error | null) => void) =>
    disk.answer(() => fs.fdatasync(at, done), done);
  return { ...fs, fdatasync: fdatasync as typeof fs.fdatasync };
});

beforeEach(() => {
  disk.answer = (real) => real();
});

async function openWithClub() {
  const store = await openClub(newClubPath());
  onTestFinished(() => store.close());
  await store.importRecords(smallClub());
  return store;
}

test('a set is acknowledged when the disk has it and not before, and whoever listens hears of it then', async () => {
  const store = await openWithClub();
  const heard: string[] = [];
  store.onChange(() => heard.push('the screens'));
  let logged: Promise<unknown> | undefined;
  const letGo = await new Promise<() => void>((asked) => {
    disk.answer = asked;
    logged = store.logSets([squatSet()]).then(() => heard.push('who logged it'));
  });
  expect(await store.loggedSets()).toHaveLength(1);
  expect(heard).toEqual([]);
  letGo();
  await logged;
  expect(heard).toEqual(['the screens', 'who logged it']);
});

test('sets that come while the disk is at work are brought to it together, and all are acknowledged', async () => {
  const store = await openWithClub();
  const log = () => store.logSets([squatSet()]);
  const all: ReturnType<typeof log>[] = [];
  const letGo = await new Promise<() => void>((asked) => {
    disk.answer = asked;
    all.push(log());
  });
  let times = 0;
  disk.answer = (real) => {
    times += 1;
    real();
  };
  all.push(...Array.from({ length: 20 }, log));
  const written = () => store.loggedSets().then(({ length }) => length);
  await vi.waitUntil(async () => (await written()) === all.length);
  letGo();
  const seqs = (await Promise.all(all)).map(({ seq }) => seq);
  expect(seqs).toEqual(seqs.map((_, i) => seqs[0]! + i));
  expect(times).toBe(1);
});

test('what the disk does not confirm is not acknowledged, and nothing is saved after it; all is read', async () => {
  const store = await openWithClub();
  disk.answer = (_real, done) => done(Object.assign(new Error('the disk'), { code: 'EIO' }));
  const refused = {
    reason: 'unavailable',
    message: expect.stringMatching(/^The disk did not confirm .* \(EIO\)/),
  };
  await expect(store.logSets([squatSet()])).rejects.toMatchObject(refused);
  disk.answer = (real) => real();
  await expect(store.logSets([squatSet()])).rejects.toMatchObject(refused);
  expect(store.trouble()).toMatch(/EIO/);
  expect((await store.records()).records).toEqual(smallClub());
});

import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { exportArchive } from '../archive.ts';
import { openStore } from '../openStore.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';

async function openWithClub() {
  const path = newClubPath();
  const store = await openClub(path);
  onTestFinished(() => store.close());
  await store.importRecords(smallClub());
  return { path, store, before: await exportArchive(store) };
}

const write = (store: { create: Awaited<ReturnType<typeof openClub>>['create'] }) =>
  store.create('bar', { label: 'New bar', massKg: 20 });

test.each([
  ['removed', (path: string) => rmSync(path)],
  ['renamed', (path: string) => renameSync(path, `${path}.old`)],
  [
    'replaced by another file',
    (path: string) => {
      writeFileSync(`${path}.new`, '');
      renameSync(`${path}.new`, path);
    },
  ],
  [
    'moved with its folder',
    (path: string) => {
      const folder = dirname(path);
      renameSync(folder, `${folder}-moved`);
      mkdirSync(folder);
      onTestFinished(() => rmSync(`${folder}-moved`, { recursive: true }));
    },
  ],
  ['robbed of its write-ahead log', (path: string) => rmSync(`${path}-wal`)],
])('a file that was %s takes no write; all that was saved is still read', async (_how, take) => {
  const { path, store, before } = await openWithClub();
  expect(store.trouble()).toBeNull();
  take(path);
  expect(store.trouble()).toContain(path);
  await expect(write(store)).rejects.toMatchObject({ reason: 'unavailable', message: store.trouble() });
  expect(await exportArchive(store)).toBe(before);
});

test('a file that is put back takes writes again', async () => {
  const { path, store } = await openWithClub();
  const elsewhere = join(dirname(path), 'elsewhere');
  renameSync(path, elsewhere);
  await expect(write(store)).rejects.toMatchObject({ reason: 'unavailable' });
  renameSync(elsewhere, path);
  expect(store.trouble()).toBeNull();
  const { record } = await write(store);
  expect(await store.get('bar', record.id)).toEqual(record);
});

test('a write during which the file goes is not acknowledged', async () => {
  const { path, store } = await openWithClub();
  const content = { records: smallClub(), prescriptions: [], takenPlans: [], sets: [], former: [] };
  const going = store.replaceAll(content, async () => rmSync(path));
  await expect(going).rejects.toMatchObject({ reason: 'unavailable' });
});

test('who opens the file once more opens no other in its place, and makes none', async () => {
  const { path, store } = await openWithClub();
  await (await openStore(path, { mark: store.mark })).close();
  renameSync(path, `${path}.old`);
  await expect(openStore(path, { mark: store.mark })).rejects.toMatchObject({ reason: 'unavailable' });
  // Nothing stands in the way of putting it back.
  renameSync(`${path}.old`, path);
  expect(store.trouble()).toBeNull();
});

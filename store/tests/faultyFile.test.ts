import {
  closeSync,
  openSync,
  readdirSync,
  readFileSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { checkWhole, lookAtFile } from '../open/lookAtFile.ts';
import { openStore } from '../openStore.ts';
import { newClubPath } from './newClubPath.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';

/** What stands in the folder of a file, byte by byte. */
function folderOf(path: string): Record<string, string> {
  const names = readdirSync(dirname(path));
  return Object.fromEntries(names.map((name) => [name, readFileSync(`${dirname(path)}/${name}`, 'latin1')]));
}

function foreignDatabase(path: string, journal: string): void {
  const other = new Database(path);
  other.pragma(`journal_mode = ${journal}`);
  other.exec('create table guest (name text); insert into guest values (1)');
  other.close();
}

test.each<[string, string, (path: string) => void]>([
  ['empty', 'is empty', (path) => writeFileSync(path, '')],
  ['of one byte', 'another kind of file', (path) => writeFileSync(path, 'x')],
  ['a text', 'another kind of file', (path) => writeFileSync(path, 'Monday: squats\n'.repeat(100))],
  ['a database of another program', 'another program', (path) => foreignDatabase(path, 'delete')],
  ['one with a write-ahead log', 'another program', (path) => foreignDatabase(path, 'wal')],
  [
    'a database that holds nothing',
    'holds no tables',
    (path) => {
      const file = new Database(path);
      file.pragma('journal_mode = WAL');
      file.close();
    },
  ],
])(
  'a file that is %s is no club: it is refused with one sentence and not changed',
  async (_what, why, make) => {
    const path = newClubPath();
    make(path);
    const before = folderOf(path);
    const refused = await openStore(path).catch((error) => error);
    expect(refused).toMatchObject({ reason: 'unavailable', message: expect.stringContaining(path) });
    expect(refused.message).toContain(why);
    expect(folderOf(path)).toEqual(before);
  },
);

/** A club of which a page of sets is overwritten: what stands there can no longer be read. */
async function damagedClub(damage: (path: string, pages: number) => void): Promise<string> {
  const path = newClubPath();
  const store = await openClub(path);
  await store.importRecords(smallClub());
  for (let i = 0; i < 40; i += 1)
    await store.create('bar', { label: `Bar ${i}`, massKg: 20, note: 'n'.repeat(400) });
  await store.close();
  damage(path, readFileSync(path).length / pageBytes);
  return path;
}

const pageBytes = 4096;

function overwrite(path: string, page: number): void {
  const bytes = readFileSync(path);
  bytes.fill(0x2a, (page - 1) * pageBytes, page * pageBytes);
  writeFileSync(path, bytes);
}

/** The first page on which such a text stands. */
function pageOf(path: string, text: string): number {
  return Math.floor(readFileSync(path).indexOf(text) / pageBytes) + 1;
}

test.each<[string, (path: string, pages: number) => void]>([
  ['its last page is overwritten', (path, pages) => overwrite(path, pages)],
  ['a page of bars is overwritten', (path) => overwrite(path, pageOf(path, 'n'.repeat(400)))],
])(
  'a file is found to be damaged as it is opened where %s: nothing is written to it',
  async (_how, damage) => {
    const path = await damagedClub(damage);
    const before = folderOf(path);
    const house = await openStore(path);
    const store = await house.forClub('club', tester);
    expect(store.trouble()).toMatch(/is damaged .*, so nothing is saved any more\. .*archive.*\.$/);
    const refused = store.create('bar', { label: 'New', massKg: 20 });
    await expect(refused).rejects.toMatchObject({ reason: 'unavailable', message: store.trouble() });
    // What is not on the page is still read.
    expect(await store.list('lifter')).toEqual(smallClub().lifter);
    // Who opens the file once more, as a thread does, writes as little.
    const once = await openStore(path, { mark: store.mark, trouble: store.trouble() });
    const again = (await once.forClub('club', tester)).create('bar', { label: 'New', massKg: 20 });
    await expect(again).rejects.toMatchObject({ reason: 'unavailable', message: store.trouble() });
    await once.close();
    await house.close();
    expect(folderOf(path)[path.slice(dirname(path).length + 1)]).toBe(
      before[path.slice(dirname(path).length + 1)],
    );
  },
);

test('a file that was cut short cannot be read at all: it is refused, not changed, and the newest archive beside it is named', async () => {
  const path = await damagedClub((path, pages) => truncateSync(path, (pages - 3) * pageBytes));
  for (const day of ['01', '02']) writeFileSync(`${path}.before-restore-2026-11-${day}.json`, '{}');
  const before = readFileSync(path);
  const refused = await openStore(path).catch((error) => error);
  expect(refused).toMatchObject({ reason: 'unavailable', message: expect.stringContaining('is damaged') });
  expect(refused.message).toContain('before-restore-2026-11-02.json');
  expect(readFileSync(path).equals(before)).toBe(true);
});

test('damage that is met while the club is read stops all writing from then on', async () => {
  const path = await damagedClub(() => {});
  const store = await openClub(path);
  onTestFinished(() => store.close());
  expect(store.trouble()).toBeNull();
  const root = new Database(path, { readonly: true });
  const { rootpage } = root.prepare(`select rootpage from sqlite_master where name = 'disc'`).get() as {
    rootpage: number;
  };
  root.close();
  overwriteInPlace(path, rootpage);
  await expect(store.list('disc')).rejects.toMatchObject({ reason: 'unavailable' });
  expect(store.trouble()).toContain('is damaged');
  await expect(store.create('bar', { label: 'New', massKg: 20 })).rejects.toMatchObject({
    reason: 'unavailable',
  });
});

test('an index that says otherwise than its table is found by the whole check alone', async () => {
  const path = await damagedClub((path) => {
    const file = new Database(path);
    file.unsafeMode(true);
    file.exec(`create table t (a); create index t_a on t (a); insert into t values (50), (60), (70)`);
    file.exec('pragma writable_schema = on');
    const { rootpage } = file.prepare(`select rootpage from sqlite_master where name = 't_a'`).get() as {
      rootpage: number;
    };
    file.close();
    // One entry of the index is another number than that of its row.
    const bytes = readFileSync(path);
    const page = bytes.subarray((rootpage - 1) * pageBytes, rootpage * pageBytes);
    const at = page.readUInt16BE(8);
    page[page.indexOf(50, at)] = 51;
    writeFileSync(path, bytes);
  });
  expect(lookAtFile(path)).toBeNull();
  expect(checkWhole(path)).toContain('is damaged');
});

/** The file stays the same one, as when a disk fails under it. */
function overwriteInPlace(path: string, page: number): void {
  const at = openSync(path, 'r+');
  writeSync(at, Buffer.alloc(pageBytes, 0x2a), 0, pageBytes, (page - 1) * pageBytes);
  closeSync(at);
}

test('what is damaged within a sound page is told in one sentence, not as a failure', async () => {
  const path = newClubPath();
  const store = await openClub(path);
  await store.importRecords(smallClub());
  await store.close();
  const file = new Database(path);
  file.exec(`update lifter set labels = '["early'`);
  file.close();
  const again = await openClub(path);
  await expect(again.list('lifter')).rejects.toMatchObject({
    reason: 'unavailable',
    message: expect.stringMatching(/is damaged .*rackwright restore/),
  });
  await again.close();
});

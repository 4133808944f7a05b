import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { exportArchive } from '../archive.ts';
import { keptCopies, snapshotFolderOf } from '../copies/keptCopies.ts';
import { readCopy } from '../copies/readCopy.ts';
import { finishRestore, isWholeFile } from '../copies/restoreFile.ts';
import { takeSnapshot } from '../copies/takeSnapshot.ts';
import { migrations } from '../migrate.ts';
import { newClubPath } from './newClubPath.ts';
import { clubOf, dumps, oldClub } from './olderClubs.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { type StepKills, stepKills } from './stepKills.ts';

let kills: StepKills;
beforeAll(async () => {
  kills = await stepKills();
});
afterAll(() => kills.dispose());

/** Which of so many steps a test kills at. */
type Which = (steps: number) => number[];

/** So many that lie evenly among them, the last one among these. */
function spread(most: number): Which {
  return (steps) => {
    const count = Math.min(steps, most);
    return Array.from({ length: count }, (_, i) => Math.round(((i + 1) * steps) / count));
  };
}

function last(count: number): Which {
  return (steps) => Array.from({ length: Math.min(steps, count) }, (_, i) => steps - i);
}

/** Does `what` to copies of a folder, killed at one step after another, and calls back with each club file that is left. */
async function killedThroughout(
  what: string,
  folder: string,
  which: Which,
  look: (path: string) => Promise<void>,
) {
  for (const step of which(await kills.stepsOf(what, folder)))
    await look(join(await kills.killedAt(what, folder, step), 'club.sqlite'));
}

async function clubInFile() {
  const path = newClubPath();
  const store = await openClub(path);
  await store.importRecords(smallClub());
  const archive = await exportArchive(store);
  return { path, folder: dirname(path), store, archive };
}

async function archiveOf(path: string): Promise<string> {
  const store = await openClub(path);
  const archive = await exportArchive(store);
  await store.close();
  expect(isWholeFile(path)).toBe(true);
  return archive;
}

/** Whatever the list names is whole. */
async function copiesOf(path: string): Promise<string[]> {
  const copies = await keptCopies(path, snapshotFolderOf(path));
  return Promise.all(copies.map((copy) => readCopy(copy, 'club', tester)));
}

test('killed while a club is made: it is there whole or not at all, and whoever makes it next sweeps away what was left', async () => {
  const { archive, store } = await clubInFile();
  await store.close();
  await killedThroughout('found', dirname(newClubPath()), spread(6), async (path) => {
    if (existsSync(path)) expect(await archiveOf(path)).toBe(archive);
    else expect(await kills.leftOf('found', dirname(path))).toEqual(['club.sqlite']);
  });
});

test('killed while sets are logged or an archive replaces the club: one or the other, and every copy in the list is whole', async () => {
  const { path, folder, store, archive: wanted } = await clubInFile();
  writeFileSync(`${path}.archive`, wanted);
  await store.create('bar', { label: 'Later', massKg: 20 });
  const before = await exportArchive(store);
  await store.close();
  const seen = new Set<string>();
  await killedThroughout('replace', folder, spread(8), async (left) => {
    const now = await archiveOf(left);
    const copies = await copiesOf(left);
    expect([before, wanted]).toContain(now);
    expect(copies.filter((copy) => copy !== before)).toEqual([]);
    if (now === wanted) expect(copies).toEqual([before]);
    seen.add(now);
  });
  expect(seen.size).toBe(2);
  await killedThroughout('log', folder, spread(4), async (left) => {
    const open = await openClub(left);
    expect([0, 40]).toContain((await open.loggedSets()).length);
    await open.close();
  });
});

test('killed while a snapshot is taken: the club is as it was, and a snapshot in the list is whole', async () => {
  const { folder, store, archive } = await clubInFile();
  await store.close();
  const counts = new Set<number>();
  await killedThroughout('snapshot', folder, spread(12), async (left) => {
    expect(await archiveOf(left)).toBe(archive);
    const copies = await copiesOf(left);
    expect(copies.filter((copy) => copy !== archive)).toEqual([]);
    counts.add(copies.length);
  });
  expect(counts).toEqual(new Set([0, 1]));
});

test('killed while a copy takes the place of a damaged file: what was there, or the copy once the club is opened; nothing is lost', async () => {
  const { path, folder, store, archive } = await clubInFile();
  await takeSnapshot(path, snapshotFolderOf(path));
  await store.create('bar', { label: 'Later', massKg: 20 });
  await store.close();
  const bytes = readFileSync(path);
  bytes.fill(0xa5, 4096, 4096 * 6);
  writeFileSync(path, bytes);
  const seen = new Set<string>();
  let between = '';
  // What is moved is moved at the end.
  const copying: Which = (steps) => [...spread(3)(steps - 8), ...last(8)(steps)];
  await killedThroughout('restore', folder, copying, async (left) => {
    const leftIn = dirname(left);
    if (!existsSync(left)) {
      between = `${leftIn}-between`;
      cpSync(leftIn, between, { recursive: true });
    }
    await finishRestore(left);
    const [aside] = readdirSync(leftIn).filter((name) => /\.damaged-.*Z$/.test(name));
    expect(readFileSync(aside === undefined ? left : join(leftIn, aside))).toEqual(bytes);
    if (aside !== undefined) expect(await archiveOf(left)).toBe(archive);
    seen.add(aside === undefined ? 'old' : 'new');
  });
  expect(seen).toEqual(new Set(['new', 'old']));
  // Whoever ends it may be killed as well.
  await killedThroughout('finishRestore', between, last(5), async (left) => {
    await finishRestore(left);
    expect(await archiveOf(left)).toBe(archive);
  });
});

test.each([dumps[0]!, dumps.at(-1)!])(
  'killed while a club of version %s is brought to today: it was not, or it is, with all it had',
  async (dump) => {
    const path = clubOf(dump);
    const had = oldClub(dump);
    await killedThroughout('open', dirname(path), spread(5), async (left) => {
      const file = new SqliteFile(left, { readonly: true });
      const steps = file.prepare('select name from kysely_migration order by name').pluck().all();
      file.close();
      const all = Object.keys(migrations);
      expect([all.length, all.indexOf(dump.replace('.sql', '')) + 1]).toContain(steps.length);
      const open = await openClub(left);
      expect((await open.records()).records).toEqual(had);
      await open.close();
      expect(isWholeFile(left)).toBe(true);
    });
  },
);

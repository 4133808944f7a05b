import assert from 'node:assert/strict';
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import { exportArchive } from '../archive.ts';
import { keptCopies, snapshotFolderOf } from '../copies/keptCopies.ts';
import { readCopy } from '../copies/readCopy.ts';
import { finishRestore, isWholeFile } from '../copies/restoreFile.ts';
import { takeSnapshot } from '../copies/takeSnapshot.ts';
import { migrations } from '../migrate.ts';
import { dumps, oldClub, writeOldClub } from './olderClubs.ts';
import { openClub, tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';

/** Looks at a club's file that is left where a program was cut short; throws where it is what it may not be, says which of the two it may be it is. */
type Look = (path: string) => Promise<'old' | 'new'>;

/** Each thing that `doOnce.mjs` does: makes the file to which it is done, and says how to look at what is left. */
export const cutShort: Record<string, (path: string) => Promise<Look>> = {
  /** There whole or not at all. */
  async found(path) {
    // Whatever else was there before is none of its concern.
    assert(!existsSync(path));
    return async (left) => {
      if (!existsSync(left)) return 'old';
      const store = await openClub(left);
      assert.deepEqual((await store.records()).records, smallClub());
      await store.close();
      return 'new';
    };
  },

  log: fortySets,
  takeIn: fortySets,

  /** What is replaced is kept, whole. */
  async replace(path) {
    const wanted = await clubIn(path);
    writeFileSync(`${path}.archive`, wanted);
    const before = await withBar(path);
    return async (left) => {
      const now = await archiveOf(left);
      const copies = await copiesOf(left);
      for (const copy of copies) assert.equal(copy, before);
      if (now === before) return 'old';
      assert.equal(now, wanted);
      assert.equal(copies.length, 1);
      return 'new';
    };
  },

  /** The club is as it was, and a snapshot in the list is whole. */
  async snapshot(path) {
    const archive = await clubIn(path);
    return async (left) => {
      assert.equal(await archiveOf(left), archive);
      const copies = await copiesOf(left);
      for (const copy of copies) assert.equal(copy, archive);
      return copies.length === 0 ? 'old' : 'new';
    };
  },

  /** The damaged file, or the copy once somebody opens the club; the damaged one stays either way. */
  async restore(path) {
    const archive = await clubIn(path);
    await takeSnapshot(path, snapshotFolderOf(path));
    await withBar(path);
    const bytes = readFileSync(path).fill(0xa5, 4096, 4096 * 6);
    writeFileSync(path, bytes);
    return async (left) => {
      await finishRestore(left);
      const [aside] = readdirSync(dirname(left)).filter((name) => /\.damaged-.*Z$/.test(name));
      const damaged = readFileSync(aside === undefined ? left : join(dirname(left), aside));
      assert(damaged.equals(bytes), 'the damaged file is another');
      if (aside === undefined) return 'old';
      assert.equal(await archiveOf(left), archive);
      return 'new';
    };
  },

  /** A copy that waits for the place of a file that is moved aside already. */
  async finishRestore(path) {
    const archive = await clubIn(path);
    cpSync(path, `${path}.restored`);
    writeFileSync(path, 'damaged');
    return async (left) => {
      await finishRestore(left);
      assert.equal(await archiveOf(left), archive);
      return 'new';
    };
  },

  ...Object.fromEntries(dumps.map((dump) => [`open ${dump}`, (path: string) => older(path, dump)])),
};

/** All forty or none. */
async function fortySets(path: string): Promise<Look> {
  await clubIn(path);
  return async (left) => {
    const store = await openClub(left);
    const sets = await store.loggedSets();
    await store.close();
    assert([0, 40].includes(sets.length), `${sets.length} sets`);
    return sets.length === 0 ? 'old' : 'new';
  };
}

/** All steps of a migration or none, and all that the club had. */
async function older(path: string, dump: string): Promise<Look> {
  writeOldClub(path, dump);
  const all = Object.keys(migrations);
  const had = all.indexOf(dump.replace('.sql', '')) + 1;
  return async (left) => {
    const file = new SqliteFile(left, { readonly: true });
    const steps = file.prepare('select count(*) from kysely_migration').pluck().get() as number;
    file.close();
    assert([had, all.length].includes(steps), `${steps} steps`);
    const store = await openClub(left);
    assert.deepEqual((await store.records()).records, oldClub(dump));
    await store.close();
    return steps === had ? 'old' : 'new';
  };
}

async function clubIn(path: string): Promise<string> {
  const store = await openClub(path);
  await store.importRecords(smallClub());
  const archive = await exportArchive(store);
  await store.close();
  return archive;
}

async function withBar(path: string): Promise<string> {
  const store = await openClub(path);
  await store.create('bar', { label: 'Later', massKg: 20 });
  const archive = await exportArchive(store);
  await store.close();
  return archive;
}

async function archiveOf(path: string): Promise<string> {
  const store = await openClub(path);
  const archive = await exportArchive(store);
  await store.close();
  assert(isWholeFile(path), 'the file is damaged');
  return archive;
}

/** Whatever the list names is whole. */
async function copiesOf(path: string): Promise<string[]> {
  const copies = await keptCopies(path, snapshotFolderOf(path));
  return Promise.all(
    copies.map((copy) => readCopy(copy, 'club', tester, async (archive) => [...archive].join(''))),
  );
}

import { setImmediate as turn } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { openOneClub } from '#server/oneClub.ts';
import { keptCopies, snapshotFolderOf } from '#store/copies/keptCopies.ts';
import { readCopy } from '#store/copies/readCopy.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { wholeOf } from '#store/tests/wholeOf.ts';
import { type Life, newLife } from './life.ts';
import { dayOf, newWrites, type Writes } from './writes.ts';

export interface Attack {
  /** Where the club file is made; its folder holds nothing else. */
  path: string;
  clients: number;
  /** The server is killed after so many acknowledged writes of each life; in its last one it is left to finish. */
  killAfter: readonly number[];
}

export interface Survived {
  acknowledged: number;
  replacements: number;
  /** Snapshots that were taken and then restored. */
  snapshots: number;
  /** Writes that were refused since others held the file for more than a minute. */
  gaveUp: number;
  kills: number;
  /** Reads that were answered while an archive replaced the club. */
  readMeanwhile: number;
  /** Acknowledged writes that are neither in the club nor in a copy that its list names, and that nobody undid. */
  lost: string[];
  /** Sets that the log has although nobody sent them, or more than once. */
  odd: string[];
  /** Answers that say the program failed. */
  failed: string[];
  integrity: string;
}

/**
 * Real servers on one real file, one after another, each killed with -9 while clients write, log sets twice, undo and read, and
 * archives and snapshots replace the club, snapshots are taken, and another program holds the file now and then. Says what became of every acknowledged write.
 */
export async function attack({ path, clients, killAfter }: Attack): Promise<Survived> {
  await found(path);
  const writes = newWrites();
  // All are begun now, since a program takes seconds to begin; the next one waits for its turn.
  const lives = [...killAfter, Number.POSITIVE_INFINITY].map((after) => ({ after, ...newLife(path) }));
  try {
    for (const { after, ...life } of lives) {
      const url = await life.serve();
      await oneLife(writes, { url, path, clients, life, after });
    }
  } finally {
    await Promise.all(lives.map(({ end }) => end()));
  }
  return { kills: killAfter.length, ...(await verdict(path, writes)) };
}

async function found(path: string): Promise<void> {
  const store = await openOneClub(path, { name: 'a test' });
  await store.importRecords(smallClub());
  // Enough of a log that a replacement takes its time.
  await store.logSets(Array.from({ length: 1500 }, (_, i) => squatSet({ doneOn: dayOf(i) })));
  await store.close();
}

/** What the last life, which nobody kills, sees at least: an archive and a snapshot come by turns. */
const replacementsInLife = 2;
const lastWrites = 60;

async function oneLife(
  writes: Writes,
  {
    url,
    path,
    clients,
    life,
    after,
  }: { url: string; path: string; clients: number; life: Life; after: number },
): Promise<void> {
  const isLast = !Number.isFinite(after);
  const begun = { acknowledged: writes.acknowledged(), replacements: writes.replacements() };
  const over = new AbortController();
  const isDone = () => {
    const done = writes.acknowledged() - begun.acknowledged;
    if (isLast) return done >= lastWrites && writes.replacements() - begun.replacements >= replacementsInLife;
    return done >= after;
  };
  const look = () => {
    if (over.signal.aborted || !isDone()) return;
    over.abort();
    if (!isLast) life.child.kill('SIGKILL');
  };
  const goOn = async (step: () => Promise<void>) => {
    while (!over.signal.aborted) {
      await step().catch(() => {});
      look();
      await turn();
    }
  };
  const works = Array.from({ length: clients }, (_, i) => goOn(() => writes.step(url, i)));
  await Promise.all([
    ...works,
    goOn(() => writes.replace(url)),
    goOn(() => writes.read(url)),
    goOn(() => holdMeanwhile(path, () => writes.read(url))),
  ]);
  await life.end();
}

const readsBetween = 10;

/** Now and then another program holds the file for as long as it takes to read from the server. */
async function holdMeanwhile(path: string, read: () => Promise<void>): Promise<void> {
  for (let i = 0; i < readsBetween; i += 1) await read();
  const other = new Database(path, { timeout: 50 });
  try {
    other.exec('begin immediate');
    await read();
    other.exec('rollback');
  } finally {
    other.close();
  }
}

async function verdict(path: string, writes: Writes): Promise<Omit<Survived, 'kills'>> {
  const store = await openOneClub(path, { name: 'a test' });
  const copies = await keptCopies(path, snapshotFolderOf(path));
  const archives = await Promise.all(
    copies.map((copy) => readCopy(copy, store.clubId, store.who, async (archive) => [...archive].join(''))),
  );
  const { records, sets } = await wholeOf(store);
  await store.close();
  const ids = new Set([...records.bar, ...sets].map(({ id }) => id));
  for (const text of archives) {
    const kept = JSON.parse(text) as { records: typeof records; sets: typeof sets };
    for (const { id } of [...kept.records.bar, ...kept.sets]) ids.add(id);
  }
  const file = new Database(path, { readonly: true });
  const integrity = String(file.pragma('integrity_check', { simple: true }));
  file.close();
  return { integrity, ...writes.verdict(ids, sets) };
}

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
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
  kills: number;
  /** Reads that were answered while an archive replaced the club. */
  readMeanwhile: number;
  /** Acknowledged writes that are in neither the club nor a kept archive and that nobody undid. */
  lost: string[];
  /** Sets that the log has although nobody sent them, or more than once. */
  odd: string[];
  /** Answers that say the program failed. */
  failed: string[];
  integrity: string;
}

/**
 * Real servers on one real file, one after another, each killed with -9 while clients write, log sets twice, undo and read, and
 * archives replace the club. Says what became of every acknowledged write.
 */
export async function attack({ path, clients, killAfter }: Attack): Promise<Survived> {
  await found(path);
  const writes = newWrites();
  // All are begun now, since a program takes seconds to begin; the next one waits for its turn.
  const lives = [...killAfter, Number.POSITIVE_INFINITY].map((after) => ({ after, ...newLife(path) }));
  try {
    for (const { after, child, serve } of lives) {
      const url = await serve();
      await oneLife(writes, { url, clients, child, after });
    }
  } finally {
    for (const { child } of lives) child.kill('SIGKILL');
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

function newLife(path: string) {
  const script = fileURLToPath(new URL('./serveUntilKilled.mjs', import.meta.url));
  const child = spawn(process.execPath, [script, path, dirname(path)], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  return {
    child,
    async serve(): Promise<string> {
      child.stdin.write('go\n');
      const [said] = (await once(child.stdout, 'data')) as [Buffer];
      return said.toString().trim();
    },
  };
}

/** What the last life, which nobody kills, sees at least. */
const replacementsInLife = 1;
const lastWrites = 60;

async function oneLife(
  writes: Writes,
  { url, clients, child, after }: { url: string; clients: number; child: ChildProcess; after: number },
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
    if (!isLast) child.kill('SIGKILL');
  };
  const goOn = async (step: () => Promise<void>) => {
    while (!over.signal.aborted) {
      await step().catch(() => {});
      look();
      await turn();
    }
  };
  const works = Array.from({ length: clients }, (_, i) => goOn(() => writes.step(url, i)));
  await Promise.all([...works, goOn(() => writes.replace(url)), goOn(() => writes.read(url))]);
  child.kill('SIGKILL');
  await (child.exitCode === null && child.signalCode === null ? once(child, 'close') : undefined);
}

async function verdict(path: string, writes: Writes): Promise<Omit<Survived, 'kills'>> {
  const store = await openOneClub(path, { name: 'a test' });
  const archives = readdirSync(dirname(path))
    .filter((name) => name.startsWith(`${basename(path)}.before-restore-`))
    .map((name) => readFileSync(join(dirname(path), name), 'utf8'));
  const { records, sets } = await store.snapshot();
  await store.close();
  const ids = new Set([...records.bar, ...sets].map(({ id }) => id));
  for (const text of archives) {
    const kept = JSON.parse(text) as { records: typeof records; sets: typeof sets };
    for (const { id } of [...kept.records.bar, ...kept.sets]) ids.add(id);
  }
  const { default: Database } = await import('better-sqlite3');
  const file = new Database(path, { readonly: true });
  const integrity = String(file.pragma('integrity_check', { simple: true }));
  file.close();
  return { integrity, ...writes.verdict(ids, sets) };
}

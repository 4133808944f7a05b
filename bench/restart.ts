import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { work } from '#server/jobs/jobs.ts';
import { keptAnswers, keptFolderOf } from '#server/jobs/keptAnswers.ts';
import { reckoningMark } from '#server/jobs/reckoningMark.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { openOneClub } from '#server/oneClub.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { takeSnapshot } from '#store/copies/takeSnapshot.ts';
import { bigClub, CLUB, TODAY } from './club/bigClub.ts';

const TOMORROW = '2026-11-26';

/**
 * From the start of the server's estimator to everybody's estimate: the first time, started again on the same day, and on the next
 * morning. How large what is kept is, and how long a checked snapshot takes.
 */
export async function run(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const path = join(folder, 'club.sqlite');
  const store = await openOneClub(path, { name: 'the bench' });
  const { records, sets } = bigClub();
  await store.importRecords(records, { sets });
  console.log(`${CLUB.lifters} lifters, ${sets.length} sets, from start to everybody's estimate:`);
  try {
    for (const [when, on] of [
      ['the first time', TODAY],
      ['started again', TODAY],
      ['the next morning', TOMORROW],
    ] as const)
      console.log(`  ${when}: ${await startAnew(store, on)}`);
    console.log(`  kept for that: ${((await bytesIn(keptFolderOf(path))) / 1e6).toFixed(0)} MB`);
    const from = performance.now();
    await takeSnapshot(path, join(folder, 'snapshots'));
    console.log(`  a snapshot, checked: ${secondsSince(from)} s of a thread of its own`);
  } finally {
    await store.close();
    await rm(folder, { recursive: true });
  }
}

async function startAnew(store: ClubStore, on: string): Promise<string> {
  const from = performance.now();
  const cpu = process.cpuUsage();
  const threads = workThreads(work);
  const keepIn = keptAnswers(store.path, await reckoningMark());
  const estimator = strengthEstimator(store, threads.run, { goesOn: true, keepIn });
  try {
    const shown = (await estimator.summaries()).length;
    const firstS = secondsSince(from);
    await estimator.ofClub(on);
    const { user, system } = process.cpuUsage(cpu);
    return `${shown} shown after ${firstS} s, all up to date after ${secondsSince(from)} s, ${((user + system) / 1e6).toFixed(1)} s of processor`;
  } finally {
    estimator.stop();
    await threads.close();
    await keepIn.written();
  }
}

async function bytesIn(folder: string): Promise<number> {
  const names = await readdir(folder, { recursive: true });
  const sizes = await Promise.all(names.map(async (name) => stat(join(folder, name))));
  return sizes.reduce((sum, found) => sum + (found.isFile() ? found.size : 0), 0);
}

function secondsSince(from: number): string {
  return ((performance.now() - from) / 1000).toFixed(1);
}

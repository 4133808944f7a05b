import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RunWork, work } from '#server/jobs/jobs.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { openOneClub } from '#server/oneClub.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';
import { bigClub, CLUB, TODAY } from './club/bigClub.ts';

/**
 * Everybody's estimates as the server makes them from scratch: the log read from its file, each lift weighed in two threads
 * with its pictures, and then what the club has shown taken in.
 */
export async function run(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'the bench' });
  const { records, sets } = bigClub();
  await store.importRecords(records, { sets });
  const threads = workThreads(work);
  const from = performance.now();
  const cpu = process.cpuUsage();
  let weighedS = 0;
  const note = () => {
    weighedS = secondsSince(from);
  };
  const timed: RunWork = (name, asked, how) => {
    const answer = threads.run(name, asked, how);
    if (name === 'weighLift') answer.then(note, note);
    return answer;
  };
  try {
    await strengthEstimator(store, timed, { goesOn: true }).ofClub(TODAY);
    const wholeS = secondsSince(from);
    const { user, system } = process.cpuUsage(cpu);
    const cpuS = (user + system) / 1e6;
    console.log(
      `${CLUB.lifters} lifters, ${sets.length} sets: all weighed after ${weighedS.toFixed(1)} s, the club taken in after ${wholeS.toFixed(1)} s, ${cpuS.toFixed(1)} s of processor, so ${(cpuS / 2).toFixed(1)} s on two quiet cores (goal < 30 s)`,
    );
  } finally {
    await threads.close();
    await store.close();
    await rm(folder, { recursive: true });
  }
}

function secondsSince(from: number): number {
  return (performance.now() - from) / 1000;
}

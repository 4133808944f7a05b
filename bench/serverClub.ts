import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { kindsOwnedBy } from '#contract/records/ownRecords.ts';
import { millraceLog } from '#demo/history/millraceLog.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { type RunWork, work } from '#server/jobs/jobs.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { openOneClub } from '#server/oneClub.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';

const TODAY = '2026-11-25';
const CLUB = { lifters: 40, sets: 100_000 };

/**
 * Everybody's estimates as the server makes them from scratch: the log read from its file, each lift weighed in two threads
 * with its pictures, and then what the club has shown taken in. The invented club's two years, its lifters repeated with other
 * heights until they are forty and their sets until they are 100 000, alike ones within a session.
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

interface OfLifter {
  id: string;
  lifterId: string;
}

function bigClub(): { records: ClubRecords; sets: LoggedSet[] } {
  const club = millraceClub(TODAY);
  const log = millraceLog(club, TODAY);
  const copies = Array.from({ length: CLUB.lifters }, (_, i) => ({
    from: club.lifter[i % club.lifter.length]!.id,
    suffix: `-${Math.floor(i / club.lifter.length)}`,
    taller: 1 + 0.01 * Math.floor(i / club.lifter.length),
  }));
  const ownOf = <T extends OfLifter>(all: readonly T[]) =>
    copies.flatMap(({ from, suffix, taller }) =>
      all
        .filter(({ lifterId }) => lifterId === from)
        .map((own) => ({ own: { ...own, id: own.id + suffix, lifterId: from + suffix }, taller })),
    );
  const sets = ownOf(log).map(({ own }) => own);
  const times = CLUB.sets / sets.length;
  return {
    records: {
      ...club,
      lifter: copies.map(({ from, suffix }) => {
        const lifter = club.lifter.find(({ id }) => id === from)!;
        return { ...lifter, id: from + suffix, name: lifter.name + suffix };
      }),
      ...Object.fromEntries(
        kindsOwnedBy('lifter').map((kind) => [kind, ownOf<OfLifter>(club[kind]).map(({ own }) => own)]),
      ),
      liftHeights: ownOf(club.liftHeights).map(({ own, taller }) => ({
        ...own,
        bottomM: taller * own.bottomM,
        lockoutM: taller * own.lockoutM,
      })),
      day: [],
    },
    sets: sets.flatMap((set, i) =>
      Array.from({ length: Math.floor((i + 1) * times) - Math.floor(i * times) }, (_, k) => ({
        ...set,
        id: `${set.id}-${k}`,
        order: 20 * set.order + k,
        dayId: null,
        planNumber: null,
      })),
    ),
  };
}

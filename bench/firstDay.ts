import { freshPlace } from '#contract/day/freshPlace.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { rehearseDay } from '#server/jobs/dayPlans.ts';
import { work } from '#server/jobs/jobs.ts';
import { workThreads } from '#server/jobs/threads.ts';

const TODAY = '2026-11-25';
const LIFTERS = 12;

/**
 * What the loads of a day cost a server that has just started: twelve lifters, three racks, twelve band pairs. Each question goes to
 * a solver of its own; where it was rehearsed, that was done before. The goal is on the clock of a machine with nothing else to do;
 * the processor's time, all threads together, says more where it has.
 */
export async function run(): Promise<void> {
  const club = threeRacks(millraceClub(TODAY));
  console.log(
    'first answer of a day, 12 lifters, 3 racks, 12 pairs, share of capability held (goal < 1000 ms after a rehearsal):',
  );
  for (const oneSetPull of [0, 0.05, 0.1]) {
    const day = dayOf(club, oneSetPull);
    const cold = await firstAnswer(club, day, false);
    const rehearsed = await firstAnswer(club, day, true);
    console.log(`  slider ${oneSetPull}: ${cold}, after a rehearsal ${rehearsed}`);
  }
}

async function firstAnswer(club: ClubRecords, day: Day, isRehearsed: boolean): Promise<string> {
  const threads = workThreads(work);
  if (isRehearsed) await rehearseDay(threads.run, club);
  const from = performance.now();
  const before = process.cpuUsage();
  const { groups } = await threads.run('solveDay', { records: club, day, estimates: [], awaited: [] });
  const { user, system } = process.cpuUsage(before);
  const ms = performance.now() - from;
  await threads.close();
  return `${ms.toFixed(0)} ms (${((user + system) / 1000).toFixed(0)} ms of processor), ${groups[0]!.proof!.status}`;
}

/** The invented club with a third rack like its first, and two pairs more. */
function threeRacks(club: ClubRecords): ClubRecords {
  const [rack] = club.rack;
  const anchors = club.anchor.filter(({ rackId }) => rackId === rack!.id);
  const hookups = club.hookup.filter(({ rackId }) => rackId === rack!.id);
  const pairs = club.bandPair.slice(0, 2);
  return {
    ...club,
    rack: [...club.rack, { ...rack!, id: again(rack!.id), label: again(rack!.label) }],
    anchor: [
      ...club.anchor,
      ...anchors.map((one) => ({ ...one, id: again(one.id), rackId: again(one.rackId) })),
    ],
    hookup: [
      ...club.hookup,
      ...hookups.map((one) => ({
        ...one,
        id: again(one.id),
        rackId: again(one.rackId),
        anchorId: again(one.anchorId),
      })),
    ],
    bandPair: [
      ...club.bandPair,
      ...pairs.map((one) => ({ ...one, id: again(one.id), label: again(one.label) })),
    ],
    bandReading: [
      ...club.bandReading,
      ...club.bandReading
        .filter(({ bandPairId }) => pairs.some(({ id }) => id === bandPairId))
        .map((one) => ({ ...one, id: again(one.id), bandPairId: again(one.bandPairId) })),
    ],
  };
}

function again(id: string): string {
  return `${id}-again`;
}

function dayOf({ day: [planned], lifter, rack }: ClubRecords, oneSetPull: number): Day {
  const [group] = planned!.groups;
  return {
    ...planned!,
    date: TODAY,
    oneSetPull,
    groups: [
      {
        ...group!,
        lift: 'squat',
        aim: { by: 'capability', bottomShare: 0.75, lockoutShare: 0.75 },
        places: lifter.slice(0, LIFTERS).map(({ id }, i) => freshPlace(id, rack[i % rack.length]!.id)),
      },
    ],
  };
}

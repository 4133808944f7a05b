import { fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { clubSeason } from '#reckon/season/clubSeason.ts';
import { gearAhead } from '#reckon/season/gearAhead.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';
import type { Asked } from './season/oneChange.ts';
import { timed } from './season/timed.ts';
import { TODAY, yearOf } from './season/yearOf.ts';

const WEEKS = 52;
const LIFTERS = 40;

/**
 * A year of a club of which nobody's plan is another's. From scratch, after one change, and with half the lifters or half the weeks; the plan's own
 * text, written and read again, is the reference. The goal after one change is held to the first answer of a program that was just started.
 */
export async function run(): Promise<void> {
  const records = yearOf(LIFTERS, WEEKS);
  timed(() => clubSeason(records, 'year', TODAY));
  const scratch = timed(() => clubSeason(records, 'year', TODAY));
  const taken = JSON.parse(JSON.stringify(scratch.made)) as ClubSeason;
  const first = timed(() => planDifferences(taken, scratch.made, TODAY));
  const gear = timed(() => gearAhead(records, TODAY));
  const text = timed(() => JSON.parse(JSON.stringify(scratch.made)) as unknown);
  const [fewer, shorter] = [yearOf(LIFTERS / 2, WEEKS), yearOf(LIFTERS, WEEKS / 2)];
  const plan = inTurn([records, fewer, shorter], (of) => clubSeason(of, 'year', TODAY));
  const check = inTurn([records, fewer, shorter], (of) => gearAhead(of, TODAY));
  console.log(
    `a season of ${LIFTERS} lifters and ${WEEKS} weeks, each with a plan of their own, in ms of processor: ${scratch.ms.toFixed(0)} ms (goal < 5000), ${(scratch.ms / text.ms).toFixed(1)} times its text written and read`,
  );
  console.log(`  held against the plan that was taken for the first time: ${first.ms.toFixed(0)} ms`);
  for (const [meetAt, whose] of ['a quarter of them', 'all of them'].entries()) {
    const { cold, warm } = await afterOneChange(meetAt);
    console.log(
      `  after a meet of ${whose} moved, with everybody's differences: the first answer of a program just started ${cold.map((ms) => ms.toFixed(0)).join(', ')} ms (goal < 300, each), later ones ${warm.toFixed(0)} ms`,
    );
  }
  console.log(
    `  racks and bands held against all of it, in a thread that nobody waits for: ${gear.ms.toFixed(0)} ms (goal < 5000 with the plan), ${gear.made.length} lines`,
  );
  for (const [what, [all, half, short]] of [['the plan', plan] as const, ['racks and bands', check] as const])
    console.log(
      `  ${what} against half the lifters ${(all / half).toFixed(1)} times, half the weeks ${(all / short).toFixed(1)} times as long (2 would be linear), all of it ${all.toFixed(0)} ms by the ${TURNS}th time`,
    );
}

const STARTS = 3;
const ANSWERS = 11;

/** The first answers of several processes, and what is in the middle of all later ones. */
async function afterOneChange(meetAt: number): Promise<{ cold: number[]; warm: number }> {
  const cold: number[] = [];
  const later: number[] = [];
  for (let start = 0; start < STARTS; start++) {
    const child = fork(fileURLToPath(new URL('season/oneChange.ts', import.meta.url)), {
      execArgv: ['--import', 'tsx'],
    });
    child.send({ lifters: LIFTERS, weeks: WEEKS, meetAt, answers: ANSWERS } satisfies Asked);
    const [told] = (await once(child, 'message')) as [number[]];
    cold.push(told[0]!);
    later.push(...told.slice(1));
  }
  return { cold, warm: later.toSorted((a, b) => a - b)[Math.floor(later.length / 2)]! };
}

const TURNS = 5;

/** The least time of each in several turns: the first runs of a program are slower than the later ones, so that sizes are held against each other in turns. */
function inTurn(clubs: [ClubRecords, ClubRecords, ClubRecords], make: (of: ClubRecords) => unknown) {
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  for (let turn = 0; turn < TURNS; turn++)
    for (const [at, of] of clubs.entries()) least[at] = Math.min(least[at]!, timed(() => make(of)).ms);
  return least;
}

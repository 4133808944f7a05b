import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { AskedPlan, ClubSeason } from '#contract/season/clubSeason.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason, type RecallPlan } from '#reckon/season/clubSeason.ts';
import { gearAhead } from '#reckon/season/gearAhead.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';

const TODAY = '2026-11-25';
const FROM = '2026-11-30';
const WEEKS = 52;
const LIFTERS = 40;

/**
 * A year of a club of which nobody's plan is another's: each lifter is away on a day of their own. From scratch, after one change, and with half the
 * lifters or half the weeks; the plan's own text, written and read again, is the reference.
 * In the processor's own time, which a machine with other work tells apart from waiting.
 */
export async function run(): Promise<void> {
  const records = yearOf(LIFTERS, WEEKS);
  timed(() => clubSeason(records, 'year', TODAY));
  const plans = new Map<string, AskedPlan>();
  const recall: RecallPlan = (key, make) => {
    const plan = plans.get(key) ?? make();
    plans.set(key, plan);
    return plan;
  };
  const scratch = timed(() => clubSeason(records, 'year', TODAY, recall));
  const taken = JSON.parse(JSON.stringify(scratch.made)) as ClubSeason;
  const first = timed(() => planDifferences(taken, scratch.made, TODAY));
  const meet = { ...records.meet[0]!, date: dateOfDay(dayNumber(records.meet[0]!.date) + 7) };
  const changed = { ...records, meet: [meet, ...records.meet.slice(1)] };
  const again = timed(() => planDifferences(taken, clubSeason(changed, 'year', TODAY, recall), TODAY));
  const gear = timed(() => gearAhead(records, TODAY));
  const text = timed(() => JSON.parse(JSON.stringify(scratch.made)) as unknown);
  const [fewer, shorter] = [yearOf(LIFTERS / 2, WEEKS), yearOf(LIFTERS, WEEKS / 2)];
  const plan = inTurn([records, fewer, shorter], (of) => clubSeason(of, 'year', TODAY));
  const check = inTurn([records, fewer, shorter], (of) => gearAhead(of, TODAY));
  console.log(
    `a season of ${LIFTERS} lifters and ${WEEKS} weeks, each with a plan of their own, in ms of processor: ${scratch.ms.toFixed(0)} ms (goal < 5000), ${(scratch.ms / text.ms).toFixed(1)} times its text written and read`,
  );
  console.log(`  held against the plan that was taken for the first time: ${first.ms.toFixed(0)} ms`);
  console.log(
    `  after one meet moved, with the differences of everybody who goes there: ${again.ms.toFixed(0)} ms (goal < 300)`,
  );
  console.log(
    `  racks and bands held against all of it, in a thread that nobody waits for: ${gear.ms.toFixed(0)} ms (goal < 5000 with the plan), ${gear.made.length} lines`,
  );
  for (const [what, [all, half, short]] of [['the plan', plan] as const, ['racks and bands', check] as const])
    console.log(
      `  ${what} against half the lifters ${(all / half).toFixed(1)} times, half the weeks ${(all / short).toFixed(1)} times as long (2 would be linear), all of it ${all.toFixed(0)} ms by the ${TURNS}th time`,
    );
}

const TURNS = 5;

/** The least time of each in several turns: the first runs of a program are slower than the later ones, so that sizes are held against each other in turns. */
function inTurn(clubs: [ClubRecords, ClubRecords, ClubRecords], make: (of: ClubRecords) => unknown) {
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  for (let turn = 0; turn < TURNS; turn++)
    for (const [at, of] of clubs.entries()) least[at] = Math.min(least[at]!, timed(() => make(of)).ms);
  return least;
}

function timed<Made>(make: () => Made): { made: Made; ms: number } {
  const before = process.cpuUsage();
  const made = make();
  const { user, system } = process.cpuUsage(before);
  return { made, ms: (user + system) / 1000 };
}

function yearOf(lifters: number, weeks: number): ClubRecords {
  const club = millraceClub(TODAY);
  const names = Array.from({ length: lifters }, (_, at) => club.lifter[at % club.lifter.length]!);
  const on = (days: number) => dateOfDay(dayNumber(FROM) + days);
  return {
    ...club,
    lifter: names.map((lifter, at) => ({ ...lifter, id: `lifter-${at}` })),
    best: names.flatMap(({ id }, at) =>
      club.best
        .filter(({ lifterId }) => lifterId === id)
        .map((best) => ({ ...best, lifterId: `lifter-${at}` })),
    ),
    bodyMass: names.flatMap(({ id }, at) =>
      club.bodyMass
        .filter(({ lifterId }) => lifterId === id)
        .map((mass) => ({ ...mass, lifterId: `lifter-${at}` })),
    ),
    meet: [0.5, 1].map((part, at) => ({
      id: `meet-${at}`,
      title: `Meet ${at}`,
      date: on(7 * Math.round(part * weeks) - 2),
      note: '',
    })),
    season: [{ id: 'year', title: 'Year', methodId: club.method[0]!.id, fromOn: FROM, note: '' }],
    seasonEntry: names.map((_, at) => ({
      id: `entry-${at}`,
      seasonId: 'year',
      lifterId: `lifter-${at}`,
      meetIds: at % 4 === 0 ? ['meet-0', 'meet-1'] : ['meet-1'],
      classes: [],
    })),
    absence: names.map((_, at) => ({
      id: `away-${at}`,
      lifterId: `lifter-${at}`,
      fromOn: on(at),
      untilOn: on(at),
      why: 'away',
    })),
    plannedByHand: [],
  };
}

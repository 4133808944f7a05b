import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import type { AskedIn } from './job.ts';
import type { RunWork, Work } from './jobs.ts';
import { nothingKept } from './keptAnswers.ts';
import { keptWork } from './keptWork.ts';
import type { HowAsked } from './newestFirst.ts';
import { workNews } from './workNews.ts';

/** A day to solve; `seq`: the change at which its records stand. */
type Solve = AskedIn<Work, 'solveDay'> & { seq: number };
type ByLog = AskedIn<Work, 'planByLog'>;

interface DayPlans {
  solve(asked: Solve, how?: HowAsked): Promise<DayPlan>;
  /** A stored plan told anew by the log, to be offered; null where there is nothing to add. */
  byLog(asked: ByLog): Promise<DayPlan | null>;
}

/** More days are hardly looked at on one evening. */
const keptCount = 20;

/**
 * Training days, solved and told anew by the log once for each state of that: every screen that waits for estimates asks each second, and
 * a day that somebody wants solved must not queue behind the same answer. An estimate that has not changed is the same object. What was
 * told anew is kept `keepIn` beyond one run of the server; `news` hears how far a day is.
 */
export function dayPlans(run: RunWork, keepIn = nothingKept, news = workNews()): DayPlans {
  const solved = keptWork({
    most: keptCount,
    width: 1,
    keyOf: ({ day }: Solve) => day.id,
    restsOn: ({ seq, estimates, awaited }) => ({ basis: [seq, ...awaited, ...estimates] }),
    onTold: ({ day }, told) => news.tell({ work: 'day', of: day.id, ...told }),
    work: ({ records, day, estimates, awaited }, _now, { tell }) =>
      run('solveDay', { records, day, estimates, awaited }, { tell }),
  });
  const told = keptWork({
    most: keptCount,
    width: 1,
    keyOf: ({ day }: ByLog) => day.id,
    keepIn: keepIn.of('plans by the log', keptCount),
    restsOn: ({ number, plan, estimates }) => ({ basis: [number, plan.basis, ...estimates] }),
    work: (asked) => run('planByLog', asked),
  });
  return { solve: solved.ask, byLog: told.ask };
}

/**
 * Solves a part of the club's newest day and tells nobody: until the thread is there, its code translated and the bands' curves
 * fitted, a first question takes a second more than those after it.
 */
export async function rehearseDay(run: RunWork, records: ClubRecords): Promise<void> {
  const day = records.day.toSorted((a, b) => a.date.localeCompare(b.date)).at(-1);
  if (day === undefined) return;
  const groups = day.groups.slice(0, 1).map((group) => ({ ...group, places: group.places.slice(0, 8) }));
  try {
    await run('solveDay', { records, day: { ...day, groups }, estimates: [], awaited: [] });
  } catch (error) {
    // What the records miss is said to whoever asks for that day.
    if (!(error instanceof CannotAssemble)) throw error;
  }
}

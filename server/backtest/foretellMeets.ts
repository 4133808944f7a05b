import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ForetoldLift } from '#contract/projection/backtestReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Tell } from '#contract/words/doing.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import { foretoldLift } from '#reckon/projection/foretoldLift.ts';
import { knownBefore } from '#reckon/projection/knownBefore.ts';
import { type MeetResult, meetResults } from '#reckon/projection/meetResults.ts';
import { clubPriors } from '#reckon/strength/clubPriors.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { ownRecords } from '#server/strength/ownRecords.ts';

interface Club {
  /** With the gear that the log names and the club no longer has. */
  records: ClubRecords;
  log: readonly LoggedSet[];
}

export interface MeetsAsked extends Club {
  /** Dates of past meets. */
  days: readonly string[];
}

/** What was foretold for one day of meets; `unforetold`: lifts of which nothing was known. */
export interface ForetoldDay {
  day: string;
  lifts: ForetoldLift[];
  unforetold: number;
}

/**
 * Foretells the meets of these days from what was known the day before: first everybody by the population, then, with what the
 * club showed until then, those who lifted. Tells of every estimate.
 */
export function foretellMeets({ days, ...club }: MeetsAsked, tell: Tell): ForetoldDay[] {
  const resultsOn = grouped(meetResults(club.log, club.records.best), ({ on }) => on);
  const meets = days.map((day) => {
    const results = resultsOn.get(day) ?? [];
    return { day, results, others: toAsk(club, day, new Set(results.map(({ lift }) => lift))) };
  });
  const total = meets.reduce((sum, { results, others }) => sum + results.length + others.length, 0);
  let done = 0;
  tell(done, total);
  return meets.map(({ day, results, others }) => {
    const known = knownBefore(club.records, club.log, day);
    const estimate = ({ lifterId, lift }: Asked, prior: Prior) => {
      const own = ownRecords(known.records, lifterId);
      const log = known.log.filter((set) => set.lifterId === lifterId && set.lift === lift);
      const found = estimateLift(own, log, { lifterId, lift, on: dateOfDay(dayNumber(day) - 1) }, prior);
      done += 1;
      tell(done, total);
      return found;
    };
    const ofClub = others.flatMap((asked) => estimate(asked, populationPrior(asked.lift)) ?? []);
    const lifts = results.flatMap((result) => {
      const found = estimate(result, clubPriors(known.records, ofClub, result.lift)(result.lifterId));
      return found === null ? [] : foretoldLift(known, found, result);
    });
    return { day, lifts, unforetold: results.length - lifts.length };
  });
}

type Asked = Pick<MeetResult, 'lifterId' | 'lift'>;

/** Everybody of whom something was known in the lifts of a meet. */
function toAsk({ records, log }: Club, day: string, lifts: ReadonlySet<Lift>): Asked[] {
  const known = [...log.filter(({ struckAt }) => struckAt === null), ...records.best].filter(
    ({ doneOn, lift }) => doneOn < day && lifts.has(lift),
  );
  return [...grouped(known, ({ lifterId, lift }) => `${lifterId} ${lift}`).values()].map(([one]) => one!);
}

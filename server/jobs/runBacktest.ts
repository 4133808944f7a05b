import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ForetoldLift } from '#contract/projection/backtestReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { grouped } from '#core/evidence/grouped.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import { foretoldLift } from '#reckon/projection/foretoldLift.ts';
import { knownBefore } from '#reckon/projection/knownBefore.ts';
import { type MeetResult, meetResults } from '#reckon/projection/meetResults.ts';
import { scoreBacktest } from '#reckon/projection/scoreBacktest.ts';
import { clubPriors } from '#reckon/strength/clubPriors.ts';
import type { EstimateLift } from './estimateThreads.ts';
import { ownRecords } from './ownRecords.ts';

interface Club {
  /** With the gear that the log names and the club no longer has. */
  records: ClubRecords;
  log: readonly LoggedSet[];
}

/**
 * Foretells every past meet from what was known the day before: first everybody by the population, then, with what the club
 * showed until then, those who lifted. `onProgress` hears of every estimate.
 */
export async function runBacktest(
  club: Club,
  estimateLift: EstimateLift,
  onProgress: (done: number, total: number) => void = () => {},
) {
  const days = [...grouped(meetResults(club.log, club.records.best), ({ on }) => on)].map(
    ([day, results]) => ({
      day,
      results,
      others: toAsk(club, day, new Set(results.map(({ lift }) => lift))),
    }),
  );
  const total = days.reduce((sum, { results, others }) => sum + results.length + others.length, 0);
  let done = 0;
  const counted = async (estimate: Promise<StrengthEstimate | null>) => {
    const found = await estimate;
    done += 1;
    onProgress(done, total);
    return found;
  };
  const lifts: ForetoldLift[] = [];
  let unforetold = 0;
  for (const { day, results, others } of days) {
    const known = knownBefore(club.records, club.log, day);
    const estimate = ({ lifterId, lift }: Asked, prior: Prior) =>
      counted(
        estimateLift({
          records: ownRecords(known.records, lifterId, []),
          log: known.log.filter((set) => set.lifterId === lifterId && set.lift === lift),
          of: { lifterId, lift, on: dateOfDay(dayNumber(day) - 1) },
          prior,
        }),
      );
    const told = await Promise.all(others.map((asked) => estimate(asked, populationPrior(asked.lift))));
    const ofClub = told.filter((one) => one !== null);
    const foretold = await Promise.all(
      results.map(async (result) => {
        const found = await estimate(result, clubPriors(known.records, ofClub, result.lift)(result.lifterId));
        return found && foretoldLift(known, found, result);
      }),
    );
    lifts.push(...foretold.filter((one) => one !== null));
    unforetold += foretold.filter((one) => one === null).length;
  }
  return scoreBacktest(lifts, unforetold);
}

type Asked = Pick<MeetResult, 'lifterId' | 'lift'>;

/** Everybody of whom something was known in the lifts of a meet. */
function toAsk({ records, log }: Club, day: string, lifts: ReadonlySet<Lift>): Asked[] {
  const known = [...log.filter(({ struckAt }) => struckAt === null), ...records.best].filter(
    ({ doneOn, lift }) => doneOn < day && lifts.has(lift),
  );
  return [...grouped(known, ({ lifterId, lift }) => `${lifterId} ${lift}`).values()].map(([one]) => one!);
}

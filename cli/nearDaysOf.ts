import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Club } from '#contract/records/club.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import type { NearDay } from '#contract/season/nearDay.ts';
import { nearUntil } from '#contract/season/nearUntil.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { showProgress } from './showProgress.ts';

/** A near day of one lifter of a season. */
export interface LifterNearDay {
  seasonId: string;
  lifterId: string;
  day: NearDay;
}

/** The near days of everybody in these seasons, to bar and bands by what is known today; day by day. */
export async function nearDaysOf(
  store: ClubStore,
  club: Club | undefined,
  seasons: readonly ClubSeason[],
  today: string,
): Promise<LifterNearDay[]> {
  const { nothingKept } = await import('#server/jobs/keptAnswers.ts');
  const { runHere } = await import('#server/jobs/runHere.ts');
  const { seasonPlans } = await import('#server/season/seasonPlans.ts');
  const { weeksAhead } = await import('#server/season/weeksAhead.ts');
  const { strengthEstimator } = await import('#server/strength/strengthEstimator.ts');
  const run = runHere(store);
  const estimator = strengthEstimator(store, run);
  const { day: dayOf } = weeksAhead(store, run, estimator, nothingKept, seasonPlans(store));
  const hideProgress = showProgress(estimator);
  const found: LifterNearDay[] = [];
  for (const { seasonId, method, lifters } of seasons)
    for (const date of datesUntil(today, nearUntil(club, method, today)))
      for (const { lifterId } of lifters) {
        const day = await dayOf({ seasonId, lifterId, date });
        if (day !== null) found.push({ seasonId, lifterId, day });
      }
  hideProgress();
  return found;
}

function datesUntil(today: string, last: string | null): string[] {
  const first = dayNumber(today);
  const days = last === null ? 0 : dayNumber(last) - first + 1;
  return Array.from({ length: days }, (_, at) => dateOfDay(first + at));
}

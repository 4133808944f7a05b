import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import type { NearDay } from '#contract/season/nearDay.ts';
import { nearUntil } from '#contract/season/nearUntil.ts';
import type { StrengthAhead } from '#contract/season/strengthAhead.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { planBasis } from '#reckon/day/planBasis.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { nearDayOf } from '#reckon/season/nearDayOf.ts';
import { nearDays } from '#reckon/season/nearDays.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { oncePerState } from '#server/jobs/oncePerState.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { loggedDays } from './loggedDays.ts';
import type { SeasonPlans } from './seasonPlans.ts';

/** The near days of a few seasons. */
const mostDays = 60;
/** Everybody of a large club, and some who were looked at before. */
const mostLifters = 80;

interface DayToSolve {
  seasonId: string;
  day: Day;
  records: ClubRecords;
  estimates: StrengthEstimate[];
}

/**
 * What is known today of the weeks ahead of a season: near days worked out to bar and bands as the Day screen would, and how strong a lifter may be later. A near day
 * is worked out once for each state of what it rests on, whoever asks; nobody's day of today waits for it.
 */
export function weeksAhead(
  store: ClubStore,
  run: RunWork,
  estimator: StrengthEstimator,
  keepIn: KeptAnswers,
  plans: SeasonPlans,
) {
  // How gear and racks are called, which a plan says in words.
  const gearMark = oncePerState(({ bandPair, hookup, chainPair, box, rack, bar, lifter }) =>
    fingerprint([bandPair, hookup, chainPair, box, rack, bar, lifter]),
  );
  const days = keptWork({
    most: mostDays,
    width: 1,
    keyOf: ({ seasonId, day }: DayToSolve) => `${seasonId} ${day.date}`,
    keepIn: keepIn.of('near days', mostDays),
    restsOn: ({ records, day, estimates }) => ({
      basis: [planBasis(records, day), gearMark(records), ...estimates],
    }),
    work: ({ records, day, estimates }): Promise<DayPlan> =>
      run('solveDayAhead', { records, day, estimates }),
  });
  const maxima = keptWork({
    most: mostLifters,
    width: 1,
    keyOf: ({ seasonId, lifterId }: { seasonId: string; lifterId: string }) => `${seasonId} ${lifterId}`,
    keepIn: keepIn.of('maxima ahead', mostLifters),
    async restsOn({ seasonId, lifterId }) {
      const { season, records, today } = await plans.now(seasonId);
      const of = season.lifters.find((one) => one.lifterId === lifterId);
      if (of === undefined)
        throw new Refusal('missing', 'lifterId', `This season has no lifter with the id "${lifterId}".`);
      const until = of.plan === null ? today : season.plans[of.plan]!.meets.at(-1)!.date;
      const { equipment } = recordById(records, 'lifter', lifterId);
      const estimates = await estimator.ofLifter(lifterId, today);
      return { basis: [until, equipment, ...estimates], records, until, equipment, estimates };
    },
    work: (_of, { records, until, equipment, estimates }) =>
      run('foretellMaxima', { records, until, equipment, estimates }),
  });

  /** One lifter's part of a day, to bar and bands; null: nobody trains then, it is not near, or it is lifted already. */
  async function day(
    { seasonId, lifterId, date }: { seasonId: string; lifterId: string; date: string },
    signal?: AbortSignal,
  ): Promise<NearDay | null> {
    const { season, records, today } = await plans.now(seasonId);
    const until = nearUntil(records.club[0], season.method, today);
    if (until === null || date < today || date > until) return null;
    const monday = mondayOf(date);
    const logged = await loggedDays(store, records, monday);
    const one = nearDays(season, monday, { records, today, logged }).find(({ day }) => day.date === date);
    if (one === undefined || (one.noRack.length === 0 && !trains(one.day, lifterId))) return null;
    const estimates = await estimatesOf(one.day, today);
    const plan = await days.ask({ seasonId, day: one.day, records, estimates }, { signal });
    return nearDayOf(records, one, plan, lifterId);
  }

  /** What is known today of the lifts of a day; whoever has no log goes by a best. */
  async function estimatesOf({ groups }: Day, today: string): Promise<StrengthEstimate[]> {
    const asked = new Map(
      groups.flatMap(({ lift, places }) =>
        places.map(({ lifterId }) => [`${lifterId} ${lift}`, { lifterId, lift }]),
      ),
    );
    const found = await Promise.all(
      [...asked.values()].map(({ lifterId, lift }) => estimator.ofLifter(lifterId, today, { lift })),
    );
    return found.flat();
  }

  async function ahead(seasonId: string, lifterId: string, signal: AbortSignal): Promise<StrengthAhead> {
    return { lifterId, lifts: await maxima.ask({ seasonId, lifterId }, { signal }) };
  }

  return { day, ahead };
}

function trains({ groups }: Day, lifterId: string): boolean {
  return groups.some(({ places }) => places.some((place) => place.lifterId === lifterId));
}

import type { ClubSeason } from './clubSeason.ts';
import type { PlannedWeek } from './seasonPlan.ts';
import type { SentSeason } from './sentSeason.ts';

/** Puts weeks that read alike into a season once. Of forty lifters who are away on different days most weeks are the same. */
export function weeksOnce(season: ClubSeason): SentSeason {
  const weeks: PlannedWeek[] = [];
  const placeOfText = new Map<string, number>();
  const placeOfWeek = new Map<PlannedWeek, number>();
  const placeOf = (week: PlannedWeek): number => {
    const text = JSON.stringify(week);
    const place = placeOfText.get(text) ?? weeks.push(week) - 1;
    placeOfText.set(text, place);
    return place;
  };
  const plans = season.plans.map((plan) => ({
    ...plan,
    weeks: plan.weeks.map((week) => {
      const place = placeOfWeek.get(week) ?? placeOf(week);
      placeOfWeek.set(week, place);
      return place;
    }),
  }));
  return { ...season, weeks, plans };
}

/** The season that was sent so. Plans that have a week in common hold the same object, by which whoever shows them works it out once. */
export function weeksInPlans({ weeks, ...season }: SentSeason): ClubSeason {
  const plans = season.plans.map((plan) => ({ ...plan, weeks: plan.weeks.map((place) => weeks[place]!) }));
  return { ...season, plans };
}

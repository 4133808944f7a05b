import type { Day } from '#contract/records/day.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { dayWithout, type TakingBeside, weekIntoDays } from './weekIntoDays.ts';

/** A day of a season as it would stand on the Day screen, with the groups of that season alone. */
export interface DayAhead {
  day: Day;
  /** Groups, by their titles, that no rack of the club takes. */
  noRack: string[];
}

/**
 * The days of a week of a season, as taking the week now would put them on the Day screen: those that stand there already
 * with what the coach changed in them. Days with logged sets are left out; one of which no rack takes anything has no groups.
 */
export function nearDays(
  season: ClubSeason,
  monday: string,
  { records, today, logged }: Omit<TakingBeside, 'newId'>,
): DayAhead[] {
  const { days, taking } = weekIntoDays(season, monday, {
    records,
    today,
    logged,
    newId: () => season.seasonId,
  });
  return taking.days.map(({ date, dayId, title }): DayAhead => {
    const day =
      days.find((one) => one.date === date) ??
      records.day.find(({ id }) => id === dayId) ??
      dayWithout(season.seasonId, date, title);
    const groups = day.groups.filter(({ planned }) => planned?.seasonId === season.seasonId);
    const noRack = taking.left.flatMap((left) =>
      left.date === date && left.why === 'noRack' && left.group !== null ? [left.group] : [],
    );
    return { day: { ...day, groups }, noRack };
  });
}

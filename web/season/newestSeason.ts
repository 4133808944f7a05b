import type { Season } from '#contract/records/season.ts';

/** The season that began last; null where there is none. */
export function newestSeason(seasons: readonly Season[]): Season | null {
  return seasons.toSorted((a, b) => b.fromOn.localeCompare(a.fromOn))[0] ?? null;
}

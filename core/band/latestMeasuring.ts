import { lengthGroups } from './lengthGroups.ts';

/** Readings this close belong to one measuring: a band hardly changes within a month (assumption). */
const ONE_MEASURING_DAYS = 30;
const DAY_MS = 86_400_000;

/** One measuring: the readings of a day and all that were taken within 30 days before it. */
export function measuringUpTo<Reading extends { takenOn: string }>(
  newest: string,
  readings: readonly Reading[],
): Reading[] {
  const newestMs = Date.parse(newest);
  return readings.filter(({ takenOn }) => {
    const daysBefore = (newestMs - Date.parse(takenOn)) / DAY_MS;
    return daysBefore >= 0 && daysBefore <= ONE_MEASURING_DAYS;
  });
}

/**
 * The readings that tell what a band is today: the newest measuring that tells a curve, that is one reading and all that
 * were taken within 30 days before it, at two lengths or more. A lone look afterwards is a check, not a measuring; where
 * nothing but such looks was taken, the newest. Dates are local calendar dates, `2026-11-25`.
 */
export function latestMeasuring<Reading extends { takenOn: string; lengthM: number }>(
  readings: readonly Reading[],
): Reading[] {
  const dates = [...new Set(readings.map(({ takenOn }) => takenOn))].sort().reverse();
  const measurings = dates.map((newest) => measuringUpTo(newest, readings));
  const tellsCurve = (measuring: Reading[]) =>
    lengthGroups(measuring.toSorted((a, b) => a.lengthM - b.lengthM)).length >= 2;
  return measurings.find(tellsCurve) ?? measurings[0] ?? [];
}

/** Readings this close belong to one measuring: a band hardly changes within a month (assumption). */
const ONE_MEASURING_DAYS = 30;
const DAY_MS = 86_400_000;

/**
 * The readings that tell what a band is today: the newest and all that were taken within 30 days before it. Older ones
 * tell what it was, and how it has drifted. Dates are local calendar dates, `2026-11-25`.
 */
export function latestMeasuring<Reading extends { takenOn: string }>(
  readings: readonly Reading[],
): Reading[] {
  const newestMs = Math.max(...readings.map((reading) => Date.parse(reading.takenOn)));
  return readings.filter(({ takenOn }) => newestMs - Date.parse(takenOn) <= ONE_MEASURING_DAYS * DAY_MS);
}

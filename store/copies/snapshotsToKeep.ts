/** So many of the newest hours, and days, in which there is a snapshot. */
export const KEPT_HOURS = 24;
export const KEPT_DAYS = 14;

/**
 * Of snapshots taken at these instants those that stay: the last of each of the newest hours and of each of the newest days that have
 * one. Hours and days are those of `UTC`. Time alone removes none: only a newer one takes the place of an older.
 */
export function snapshotsToKeep(takenAt: readonly string[]): Set<string> {
  const newestFirst = takenAt.toSorted().toReversed();
  const lastOfEach = (spell: (instant: string) => string, most: number) => {
    const spells = [...new Set(newestFirst.map(spell))].slice(0, most);
    return spells.map((one) => newestFirst.find((instant) => spell(instant) === one)!);
  };
  return new Set([
    ...lastOfEach((instant) => instant.slice(0, '2026-11-30T05'.length), KEPT_HOURS),
    ...lastOfEach((instant) => instant.slice(0, '2026-11-30'.length), KEPT_DAYS),
  ]);
}

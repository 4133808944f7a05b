import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The mean speed (m/s) over all reps of these sets that were measured; null where none was. */
export function meanOfSpeeds(sets: readonly Pick<LoggedSet, 'meanSpeedsMps'>[]): number | null {
  const speeds = sets.flatMap(({ meanSpeedsMps }) => meanSpeedsMps);
  return speeds.length === 0 ? null : speeds.reduce((sum, mps) => sum + mps, 0) / speeds.length;
}

/** "0.95 m/s"; a dash where nobody measured. */
export function speedText(mps: number | null): string {
  return mps === null ? '–' : `${mps.toFixed(2)} m/s`;
}

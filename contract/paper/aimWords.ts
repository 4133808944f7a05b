import type { Aim } from '#contract/records/day.ts';

type SpeedAim = Extract<Aim, { by: 'speed' }>;

/** A speed that is aimed at, the same on screen, paper and terminal: "0.75 to 0.85 m/s mean speed, first rep of a set". */
export function speedAimWords({ fromMps, toMps, of }: SpeedAim): string {
  const whose = of === 'set' ? 'all reps of a set together' : 'first rep of a set';
  return `${fromMps} to ${toMps} m/s mean speed, ${whose}`;
}

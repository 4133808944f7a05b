import { normalQuantile } from '#core/numeric/normal.ts';
import type { BandReading, Direction } from './BandCurve.ts';
import { lengthGroups } from './lengthGroups.ts';
import { readingErrorN } from './readingErrorN.ts';

/** A loop pulled less at a longer length than at a shorter one: no band does that, so one of the readings is a slip. */
export interface FallingForce {
  direction: Direction;
  shorter: { lengthM: number; forceN: number };
  longer: { lengthM: number; forceN: number };
}

/** Chance that readings of a sound band are questioned though they only scatter (assumption). */
const QUESTIONED_IN_VAIN = 0.05;

/**
 * The greatest fall of each direction from one length to the next, where it is more than the reading errors of both explain,
 * with as many chances for that as there are steps (Bonferroni). Several readings at one length count as their mean.
 */
export function fallingForces(readings: readonly BandReading[]): FallingForce[] {
  return (['loading', 'unloading'] as const).flatMap((direction) => {
    const points = lengthGroups(
      readings.filter((r) => r.direction === direction).sort((a, b) => a.lengthM - b.lengthM),
    ).map(mean);
    const falls = points.slice(1).map((longer, i) => {
      const shorter = points[i]!;
      const sds = (shorter.forceN - longer.forceN) / Math.hypot(shorter.sdN, longer.sdN);
      return { direction, shorter, longer, sds };
    });
    const [greatest] = falls.toSorted((a, b) => b.sds - a.sds);
    if (!greatest || greatest.sds <= normalQuantile(1 - QUESTIONED_IN_VAIN / falls.length)) return [];
    const { shorter, longer } = greatest;
    return [{ direction, shorter: bare(shorter), longer: bare(longer) }];
  });
}

function mean(group: readonly BandReading[]): { lengthM: number; forceN: number; sdN: number } {
  const of = (pick: (reading: BandReading) => number) =>
    group.reduce((sum, reading) => sum + pick(reading), 0) / group.length;
  const forceN = of((reading) => reading.forceN);
  return {
    lengthM: of((reading) => reading.lengthM),
    forceN,
    sdN: readingErrorN(forceN) / Math.sqrt(group.length),
  };
}

function bare({ lengthM, forceN }: { lengthM: number; forceN: number }) {
  return { lengthM, forceN };
}

import { monotoneCurve } from '../numeric/monotoneCurve.ts';
import type { HungBand } from './Rig.ts';

/** Reading error assumed for a pull read on a scale: 1.5 % of it and 2 N (assumption). */
const READING_SHARE = 0.015;
const READING_FLOOR_N = 2;

export interface HungPull {
  downN(zM: number): number;
  downSdN(zM: number): number;
  breaksM: number[];
}

/**
 * Vertical pull of a band read on a scale at bar heights, `count` of them alike; down is positive. Linear between
 * and beyond two readings, a smooth monotone curve through three or more. Where every reading pulls down it never
 * pulls up, and the other way round.
 */
export function hungPull(band: HungBand, fromM: number, toM: number): HungPull {
  const sorted = [...band.verticalAt].sort((a, b) => a.zM - b.zM);
  const curve = monotoneCurve(
    sorted.map((r) => r.zM),
    sorted.map((r) => r.forceN),
  );
  const allDown = sorted.every((r) => r.forceN >= 0);
  const allUp = sorted.every((r) => r.forceN <= 0);
  const oneN = (zM: number) => {
    const forceN = curve.at(zM);
    if (allDown) return Math.max(0, forceN);
    if (allUp) return Math.min(0, forceN);
    return forceN;
  };
  return {
    downN: (zM) => band.count * oneN(zM),
    downSdN: (zM) => band.count * Math.hypot(READING_SHARE * oneN(zM), READING_FLOOR_N),
    breaksM: [...sorted.map((r) => r.zM), ...endZeros(curve, sorted)].filter((z) => z > fromM && z < toM),
  };
}

/** Where the straight runs beyond the readings cross zero. */
function endZeros(
  curve: ReturnType<typeof monotoneCurve>,
  sorted: readonly { zM: number; forceN: number }[],
): number[] {
  return [sorted[0]!, sorted[sorted.length - 1]!].flatMap(({ zM, forceN }) => {
    const slope = curve.slopeAt(zM);
    return slope === 0 ? [] : [zM - forceN / slope];
  });
}

import type { BandCurve, BandReading } from './BandCurve.ts';
import { readingErrorN } from './readingErrorN.ts';
import { residualScale } from './residualScale.ts';

/**
 * A straight line through readings at exactly two lengths (sorted by length), described by the mean force at each.
 * Null where the force does not grow with the length: no band does that, and a line would carry the error on.
 */
export function fitLine(restLengthM: number, readings: readonly BandReading[]): BandCurve | null {
  const shorterM = readings[0]!.lengthM;
  const longerM = readings.at(-1)!.lengthM;
  const shorter = weightedMean(readings.filter((r) => r.lengthM === shorterM));
  const longer = weightedMean(readings.filter((r) => r.lengthM === longerM));
  if (longer.forceN <= shorter.forceN) return null;
  const scale = residualScale(shorter.chiSquare + longer.chiSquare, readings.length, 2);
  const variance = scale.residualScale ** 2;
  return {
    model: 'line',
    parameters: [shorter.forceN, longer.forceN, shorterM, longerM],
    parameterNames: ['shorterForceN', 'longerForceN', 'shorterLengthM', 'longerLengthM'],
    covariance: [
      [shorter.variance * variance, 0, 0, 0],
      [0, longer.variance * variance, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ],
    restLengthM,
    measuredToM: longerM,
    known: 'measured',
    direction: readings[0]!.direction,
    ...scale,
  };
}

function weightedMean(readings: readonly BandReading[]): {
  forceN: number;
  variance: number;
  chiSquare: number;
} {
  const weights = readings.map((r) => readingErrorN(r.forceN) ** -2);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const forceN = readings.reduce((sum, r, i) => sum + r.forceN * weights[i]!, 0) / total;
  const chiSquare = readings.reduce((sum, r, i) => sum + weights[i]! * (r.forceN - forceN) ** 2, 0);
  return { forceN, variance: 1 / total, chiSquare };
}

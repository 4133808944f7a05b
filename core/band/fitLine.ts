import type { BandCurve, BandReading } from './BandCurve.ts';
import { readingErrorN } from './readingErrorN.ts';
import { residualScale } from './residualScale.ts';

/**
 * A straight line through readings at two lengths, described by the mean length and force of each group.
 * Null where the force does not grow with the length: no band does that, and a line would carry the error on.
 */
export function fitLine(
  restLengthM: number,
  atShorter: readonly BandReading[],
  atLonger: readonly BandReading[],
): BandCurve | null {
  const shorter = weightedMean(atShorter);
  const longer = weightedMean(atLonger);
  if (longer.forceN <= shorter.forceN) return null;
  const scale = residualScale(shorter.chiSquare + longer.chiSquare, atShorter.length + atLonger.length, 2);
  const variance = scale.residualScale ** 2;
  return {
    model: 'line',
    parameters: [shorter.forceN, longer.forceN, shorter.lengthM, longer.lengthM],
    parameterNames: ['shorterForceN', 'longerForceN', 'shorterLengthM', 'longerLengthM'],
    covariance: [
      [shorter.variance * variance, 0, 0, 0],
      [0, longer.variance * variance, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ],
    restLengthM,
    measuredToM: atLonger.at(-1)!.lengthM,
    known: 'measured',
    direction: atShorter[0]!.direction,
    ...scale,
  };
}

function weightedMean(readings: readonly BandReading[]): {
  lengthM: number;
  forceN: number;
  variance: number;
  chiSquare: number;
} {
  const weights = readings.map((r) => readingErrorN(r.forceN) ** -2);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const forceN = readings.reduce((sum, r, i) => sum + r.forceN * weights[i]!, 0) / total;
  const chiSquare = readings.reduce((sum, r, i) => sum + weights[i]! * (r.forceN - forceN) ** 2, 0);
  const lengthM = readings.reduce((sum, r) => sum + r.lengthM, 0) / readings.length;
  return { lengthM, forceN, variance: 1 / total, chiSquare };
}

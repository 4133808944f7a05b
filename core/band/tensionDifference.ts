import type { BandCurve } from './BandCurve.ts';
import { tensionFunction } from './tensionFunction.ts';

/**
 * How much more `a` pulls than `b` at the same lengths, as a share of the mean of both: the difference of their mean
 * tensions from the shorter rest length to the longest length that both were read at. Null where either was never
 * measured, for then nothing is known of the difference.
 */
export function tensionDifference(a: BandCurve, b: BandCurve): number | null {
  if (a.known !== 'measured' || b.known !== 'measured') return null;
  const fromM = Math.min(a.restLengthM, b.restLengthM);
  const toM = Math.min(a.measuredToM, b.measuredToM);
  const ofA = tensionFunction(a);
  const ofB = tensionFunction(b);
  let sumA = 0;
  let sumB = 0;
  for (let i = 1; i <= STEPS; i++) {
    const lengthM = fromM + ((toM - fromM) * i) / STEPS;
    sumA += ofA(lengthM);
    sumB += ofB(lengthM);
  }
  return sumA + sumB > 0 ? (2 * (sumA - sumB)) / (sumA + sumB) : null;
}

const STEPS = 100;

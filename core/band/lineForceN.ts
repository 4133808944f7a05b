import type { BandCurve } from './BandCurve.ts';

/**
 * Force (N) of a band known by two lengths: the straight line through both; below the shorter one the lower of that
 * line and the chord from slack (rest length, 0 N), so that nothing jumps at the rest length.
 */
export function lineForceN(curve: BandCurve, lengthM: number): number {
  const [shorterN, longerN, shorterM, longerM] = curve.parameters as LineParameters;
  const line = shorterN + ((longerN - shorterN) * (lengthM - shorterM)) / (longerM - shorterM);
  if (lengthM >= shorterM) return line;
  const chord = (shorterN * (lengthM - curve.restLengthM)) / (shorterM - curve.restLengthM);
  return Math.max(Math.min(line, chord), 0);
}

/** Forces (N) at the shorter and the longer length (m), and these lengths. */
export type LineParameters = [number, number, number, number];

import type { BandCurve } from './BandCurve.ts';
import { bandPrior } from './bandPrior.ts';
import { type LineParameters, lineForceN } from './lineForceN.ts';
import { tensionFunction } from './tensionFunction.ts';

/**
 * Variance (N2) of a band known by two lengths, at a length above rest: from the two readings, and from the shape that
 * two readings cannot show. The latter's standard deviation is half the distance to natural rubber's curve (the
 * prior's shape) bent through both readings: judgement; with the few degrees of freedom of a line it covers twice
 * that distance.
 */
export function lineSpread(curve: BandCurve, lengthM: number): number {
  const [shorterShare, longerShare] = shares(curve, lengthM);
  const readings = shorterShare ** 2 * curve.covariance[0]![0]! + longerShare ** 2 * curve.covariance[1]![1]!;
  return readings + ((lineForceN(curve, lengthM) - rubberForceN(curve, lengthM)) / 2) ** 2;
}

/** Derivatives of `lineForceN` by the two forces. */
function shares(curve: BandCurve, lengthM: number): [number, number] {
  const [shorterN, , shorterM, longerM] = curve.parameters as LineParameters;
  const along = (lengthM - shorterM) / (longerM - shorterM);
  if (along >= 0) return [1 - along, along];
  const chord = (lengthM - curve.restLengthM) / (shorterM - curve.restLengthM);
  return lineForceN(curve, lengthM) < shorterN * chord ? [1 - along, along] : [chord, 0];
}

/** Natural rubber's curve through both readings: its level changes evenly from the one to the other. */
function rubberForceN(curve: BandCurve, lengthM: number): number {
  const [shorterN, longerN, shorterM, longerM] = curve.parameters as LineParameters;
  const rubberN = tensionFunction(bandPrior(curve.restLengthM, 1, curve.direction));
  const shorterLevel = shorterN / rubberN(shorterM);
  const longerLevel = longerN / rubberN(longerM);
  const along = Math.min(Math.max((lengthM - shorterM) / (longerM - shorterM), 0), 1);
  return (shorterLevel + (longerLevel - shorterLevel) * along) * rubberN(lengthM);
}

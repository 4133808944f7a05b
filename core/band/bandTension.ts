import { quadraticForm } from '#core/numeric/quadraticForm.ts';
import { studentTQuantile } from '#core/numeric/studentT.ts';
import { NORMAL_95 } from '../numeric/normal.ts';
import type { BandCurve } from './BandCurve.ts';
import { bandForm } from './bandForms.ts';
import { lineSpread } from './lineSpread.ts';
import { readingErrorN } from './readingErrorN.ts';
import { tensionFunction } from './tensionFunction.ts';

/** A force with its 95 % prediction interval: where the next reading at that length would fall 19 times in 20. */
export interface TensionInterval {
  tensionN: number;
  /** Standard deviation of the normal distribution with the same 95 % width, so that it may be added in squares. */
  sdN: number;
  low95N: number;
  high95N: number;
  /** Beyond the longest reading, or not measured at all. */
  extrapolated: boolean;
}

/** Force (N) of one loop at a length end to end (m): 0 up to the rest length, never negative. */
export function bandTension(curve: BandCurve, lengthM: number): number {
  return tensionFunction(curve)(lengthM);
}

/**
 * `tension +- t sqrt(gradientᵀ covariance gradient + (s readingError)^2)` with the t quantile of the fit's degrees of
 * freedom; for a line also by how far rubber would bend away from it (`lineSpread`); beyond the longest
 * reading also by what the form itself may miss there; for the prior a factor of
 * `exp(+-1.96 sd)`. Never below 0; nothing is uncertain about a slack band.
 */
export function bandTensionInterval(curve: BandCurve, lengthM: number): TensionInterval {
  const tensionN = bandTension(curve, lengthM);
  if (lengthM <= curve.restLengthM) {
    return { tensionN: 0, sdN: 0, low95N: 0, high95N: 0, extrapolated: false };
  }
  if (curve.model === 'prior') {
    const factor = Math.exp(NORMAL_95 * Math.sqrt(curve.covariance[0]![0]!));
    return between(tensionN, tensionN / factor, tensionN * factor, true);
  }
  const fitVariance =
    curve.model === 'line'
      ? lineSpread(curve, lengthM)
      : quadraticForm(
          bandForm(curve.model).gradient(curve.parameters, lengthM / curve.restLengthM),
          curve.covariance,
        );
  const beyond = Math.max(lengthM / curve.measuredToM - 1, 0);
  const sd = Math.hypot(
    Math.sqrt(fitVariance),
    curve.residualScale * readingErrorN(tensionN),
    SHAPE_SD_BEYOND * beyond * tensionN,
  );
  const half = studentTQuantile(0.975, curve.degreesOfFreedom) * sd;
  return between(tensionN, Math.max(tensionN - half, 0), tensionN + half, lengthM > curve.measuredToM, half);
}

/**
 * Standard deviation of the form beyond the longest reading, as a share of the tension for each unit of excess length:
 * Mooney-Rivlin and one-term Ogden fits to the first part of Kawabata's data (1981, Macromolecules 14:154-162) miss
 * the rest by up to 0.26 for each unit.
 */
const SHAPE_SD_BEYOND = 0.15;

function between(
  tensionN: number,
  low95N: number,
  high95N: number,
  extrapolated: boolean,
  half = (high95N - low95N) / 2,
): TensionInterval {
  return { tensionN, sdN: half / NORMAL_95, low95N, high95N, extrapolated };
}

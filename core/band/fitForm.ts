import type { BandCurve, BandReading } from './BandCurve.ts';
import { type JudgedForm, judgeForms } from './judgeForms.ts';
import { residualScale } from './residualScale.ts';

/**
 * The candidate form that foretells a reading best from the other readings, fitted to all of them (one branch, sorted).
 *
 * Candidates have at least one reading, at a length of its own, more than parameters, and must rise over the whole
 * range in use. They are judged by the squared leave-one-out error in units of the reading error; the simplest whose
 * excess over the best is within one standard error of that excess (or too small to see) is taken, since noise alone
 * decides between them.
 */
export function fitForm(restLengthM: number, readings: readonly BandReading[]): BandCurve {
  const chosen = simplestOfTheBest(judgeForms(restLengthM, readings));
  if (!chosen) throw new RangeError('No form of rubber curve fits these readings.');
  const { form, fit } = chosen;
  const scale = residualScale(fit.chiSquare, readings.length, fit.parameters.length);
  return {
    model: form.name,
    parameters: fit.parameters,
    parameterNames: form.parameterNames,
    covariance: fit.covariance.map((row) => row.map((c) => c * scale.residualScale ** 2)),
    restLengthM,
    measuredToM: readings.at(-1)!.lengthM,
    known: 'measured',
    direction: readings[0]!.direction,
    ...scale,
  };
}

/** Excess squared error, in units of the reading error, that no scale can show. */
const NEGLIGIBLE = 1e-4;

function simplestOfTheBest(candidates: readonly JudgedForm[]): JudgedForm | null {
  const ranked = candidates.toSorted((a, b) => mean(a.errors) - mean(b.errors));
  const best = ranked[0];
  if (!best) return null;
  return (
    ranked
      .toSorted((a, b) => a.form.parameterNames.length - b.form.parameterNames.length)
      .find((candidate) => {
        const excess = candidate.errors.map((e, i) => e - best.errors[i]!);
        return mean(excess) <= Math.max(standardError(excess), NEGLIGIBLE);
      }) ?? best
  );
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}

function standardError(values: readonly number[]): number {
  const centre = mean(values);
  const squares = values.reduce((sum, v) => sum + (v - centre) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1) / values.length);
}

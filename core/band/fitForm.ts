import { type LeastSquaresFit, leastSquares } from '#core/numeric/leastSquares.ts';
import type { BandCurve, BandReading } from './BandCurve.ts';
import type { BandForm, FormRange } from './BandForm.ts';
import { bandForms } from './bandForms.ts';
import { readingErrorN } from './readingErrorN.ts';
import { residualScale } from './residualScale.ts';

/**
 * The candidate form that foretells a reading best from the other readings, fitted to all of them (one branch, sorted).
 *
 * Candidates have at least one reading, at a length of its own, more than parameters, and must rise over the whole
 * range in use. They are judged by the squared leave-one-out error in units of the reading error; the simplest whose
 * excess over the best is within one standard error of that excess (or too small to see) is taken, since noise alone decides between them.
 */
export function fitForm(restLengthM: number, readings: readonly BandReading[]): BandCurve {
  const lengths = new Set(readings.map((r) => r.lengthM)).size;
  const longest = readings.at(-1)!.lengthM / restLengthM;
  const candidates: Candidate[] = [];
  for (const form of bandForms) {
    if (form.parameterNames.length >= lengths) continue;
    const candidate = judge(form, restLengthM, readings);
    if (candidate && rises(form.force(candidate.fit.parameters), longest)) candidates.push(candidate);
  }
  const chosen = simplestOfTheBest(candidates);
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

type Fit = Extract<LeastSquaresFit, { ok: true }>;

interface Candidate {
  form: BandForm;
  fit: Fit;
  /** Squared leave-one-out errors, in units of the reading error, reading by reading. */
  errors: readonly number[];
}

function judge(form: BandForm, restLengthM: number, readings: readonly BandReading[]): Candidate | null {
  const points = readings.map((r) => ({
    lambda: r.lengthM / restLengthM,
    forceN: r.forceN,
    sdN: readingErrorN(r.forceN),
  }));
  let best: { fit: Fit; range: FormRange } | null = null;
  for (const range of form.ranges) {
    const fit = fitPoints(form, points, range, startFor(form, range, points));
    if (fit.ok && (!best || fit.chiSquare < best.fit.chiSquare)) best = { fit, range };
  }
  if (!best) return null;
  const errors: number[] = [];
  for (const left of points) {
    const rest = points.filter((p) => p !== left);
    const fit = fitPoints(form, rest, best.range, best.fit.parameters);
    if (!fit.ok) return null;
    errors.push(((form.force(fit.parameters)(left.lambda) - left.forceN) / left.sdN) ** 2);
  }
  return { form, fit: best.fit, errors };
}

interface Point {
  lambda: number;
  forceN: number;
  sdN: number;
}

function fitPoints(
  form: BandForm,
  points: readonly Point[],
  range: FormRange,
  start: readonly number[],
): LeastSquaresFit {
  return leastSquares({
    values: points.map((p) => p.forceN),
    sds: points.map((p) => p.sdN),
    model: (parameters) => {
      const force = form.force(parameters);
      return points.map((p) => force(p.lambda));
    },
    jacobian: (parameters) => points.map((p) => form.gradient(parameters, p.lambda)),
    lower: range.lower,
    upper: range.upper,
    starts: [start],
  });
}

/** The range's own start, its stiffnesses (all that are named in N) brought to the level of the readings. */
function startFor(form: BandForm, range: FormRange, points: readonly Point[]): number[] {
  const unit = form.force(range.start);
  const level =
    points.reduce((sum, p) => sum + (unit(p.lambda) * p.forceN) / p.sdN ** 2, 0) /
    points.reduce((sum, p) => sum + (unit(p.lambda) / p.sdN) ** 2, 0);
  return range.start.map((v, k) => (form.parameterNames[k]!.endsWith('N') ? v * level : v));
}

/** Bands are used somewhat beyond their longest reading, and to three times their rest length at most. */
const USED_BEYOND = 1.3;
const USED_TO = 3;
const STEPS = 60;

function rises(force: (lambda: number) => number, longest: number): boolean {
  const end = Math.max(USED_BEYOND * longest, USED_TO);
  let before = 0;
  for (let i = 1; i <= STEPS; i++) {
    const now = force(1 + ((end - 1) * i) / STEPS);
    if (!(now > before)) return false;
    before = now;
  }
  return true;
}

/** Excess squared error, in units of the reading error, that no scale can show. */
const NEGLIGIBLE = 1e-4;

function simplestOfTheBest(candidates: readonly Candidate[]): Candidate | null {
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

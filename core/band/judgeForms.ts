import { type LeastSquaresFit, leastSquares } from '#core/numeric/leastSquares.ts';
import { quadraticForm } from '#core/numeric/quadraticForm.ts';
import type { BandReading } from './BandCurve.ts';
import type { BandForm, FormRange } from './BandForm.ts';
import { bandForms } from './bandForms.ts';
import { lengthGroups } from './lengthGroups.ts';
import { readingErrorN } from './readingErrorN.ts';

export type Fit = Extract<LeastSquaresFit, { ok: true }>;

/** A form fitted to all readings of a branch, and how well it foretells each reading from the others. */
export interface JudgedForm {
  form: BandForm;
  fit: Fit;
  /** Squared leave-one-out errors, in units of the reading error, reading by reading. */
  errors: readonly number[];
  /** Root mean square of the leave-one-out errors as a share of that of the forces read. */
  leftOutShare: number;
}

/**
 * Every form that may stand for these readings (one branch, sorted): with at least one reading, at a length of its own,
 * more than parameters, and rising over the whole range in use.
 */
export function judgeForms(restLengthM: number, readings: readonly BandReading[]): JudgedForm[] {
  const lengths = lengthGroups(readings).length;
  return bandForms
    .filter((form) => form.parameterNames.length < lengths)
    .map((form) => judge(form, restLengthM, readings))
    .filter((judged) => judged !== null);
}

function judge(form: BandForm, restLengthM: number, readings: readonly BandReading[]): JudgedForm | null {
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
  if (!best || !rises(form.force(best.fit.parameters), points.at(-1)!.lambda)) return null;
  const missesN =
    points.length <= REFITTED_UP_TO
      ? refittedMissesN(form, points, best.range, best.fit)
      : leverageMissesN(form, points, best.fit);
  if (!missesN) return null;
  const errors = missesN.map((missN, i) => (missN / points[i]!.sdN) ** 2);
  const leftOutShare = Math.sqrt(sumOfSquares(missesN) / sumOfSquares(points.map((p) => p.forceN)));
  return { form, fit: best.fit, errors, leftOutShare };
}

/** Up to so many readings each is left out by a fit of its own; among more, no single one moves the fit far. */
const REFITTED_UP_TO = 40;

/** How far (N) each reading is missed by the fit to all the others; null where one of these fits does not settle. */
function refittedMissesN(
  form: BandForm,
  points: readonly Point[],
  range: FormRange,
  { parameters }: Fit,
): number[] | null {
  const missesN: number[] = [];
  for (const left of points) {
    const rest = points.filter((p) => p !== left);
    const fit = fitPoints(form, rest, range, parameters);
    if (!fit.ok) return null;
    missesN.push(form.force(fit.parameters)(left.lambda) - left.forceN);
  }
  return missesN;
}

/**
 * The same from the fit to all of them: a reading's miss over one less its leverage, the weight that it has in its own
 * curve. Exact for forms that are linear in their parameters (Allen 1974, Technometrics 16:125, from memory), else to
 * first order, so that the work grows with the readings and not with their square.
 */
function leverageMissesN(
  form: BandForm,
  points: readonly Point[],
  { parameters, covariance }: Fit,
): number[] {
  const force = form.force(parameters);
  return points.map(({ lambda, forceN, sdN }) => {
    const leverage = quadraticForm(form.gradient(parameters, lambda), covariance) / sdN ** 2;
    return (force(lambda) - forceN) / (1 - leverage);
  });
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v * v, 0);
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

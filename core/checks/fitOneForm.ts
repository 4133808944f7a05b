import type { BandForm } from '#core/band/BandForm.ts';
import { type LeastSquaresFit, leastSquares } from '#core/numeric/leastSquares.ts';

/** One form fitted to points (stretch ratio, force or stress), from each of its ranges; the least misfit. */
export function fitOneForm(
  form: BandForm,
  points: readonly (readonly number[])[],
  sd: (value: number) => number,
  level: number,
): Extract<LeastSquaresFit, { ok: true }> {
  const fits = form.ranges.map(({ lower, upper, start }) =>
    leastSquares({
      values: points.map(([, value]) => value!),
      sds: points.map(([, value]) => sd(value!)),
      model: (parameters) => points.map(([stretch]) => form.force(parameters)(stretch!)),
      jacobian: (parameters) => points.map(([stretch]) => form.gradient(parameters, stretch!)),
      lower,
      upper,
      starts: [start.map((v, k) => (form.parameterNames[k]!.endsWith('N') ? v * level : v))],
    }),
  );
  const settled = fits.filter((fit) => fit.ok).sort((a, b) => a.chiSquare - b.chiSquare);
  if (!settled[0])
    throw new Error(`${form.name}: ${fits.map((fit) => (fit.ok ? '' : fit.reason)).join('; ')}`);
  return settled[0];
}

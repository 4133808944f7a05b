import { describe, expect, it } from 'vitest';
import { bandForms } from '#core/band/bandForms.ts';
import { readingErrorN } from '#core/band/readingErrorN.ts';
import { monotoneCurve } from '#core/numeric/monotoneCurve.ts';
import { studentTQuantile } from '#core/numeric/studentT.ts';
import { fitOneForm } from './fitOneForm.ts';
import reference from './reference/fitBands.json' with { type: 'json' };

/** Against SciPy: the script and how to run it lie beside the stored values. */
describe('fits agree with a general-purpose optimiser', () => {
  for (const [data, { points, forms }] of Object.entries(reference.fits)) {
    for (const form of bandForms) {
      it(`${form.name} on ${data}`, () => {
        const expected = forms[form.name];
        const fit = fitOneForm(form, points, readingErrorN, 200);
        expect(Math.abs(fit.chiSquare - expected.chiSquare)).toBeLessThan(2e-8 * (1 + expected.chiSquare));
        fit.parameters.forEach((value, k) => {
          const allowed = Math.max(
            2e-4 * expected.standardErrors[k]!,
            1e-6 * Math.abs(expected.parameters[k]!),
          );
          expect(Math.abs(value - expected.parameters[k]!)).toBeLessThan(allowed);
          const error = Math.sqrt(fit.covariance[k]![k]!);
          expect(Math.abs(error - expected.standardErrors[k]!)).toBeLessThan(
            1e-3 * expected.standardErrors[k]! + 1e-12,
          );
        });
      });
    }
  }
});

describe('the t quantile agrees to 1e-9', () => {
  it.each(reference.studentT)('P = %f, %i degrees of freedom', (probability, degrees, t) => {
    expect(Math.abs(studentTQuantile(probability, degrees) - t)).toBeLessThan(
      1e-9 * Math.max(1, Math.abs(t)),
    );
  });
});

describe('the monotone curve agrees with PCHIP', () => {
  const { knots, at } = reference.monotone;
  const curve = monotoneCurve(
    knots.map(([x]) => x!),
    knots.map(([, y]) => y!),
  );
  it.each(at)('at %f', (x, y, slope) => {
    expect(curve.at(x)).toBeCloseTo(y, 12);
    expect(curve.slopeAt(x)).toBeCloseTo(slope, 12);
  });
});

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandForm } from './BandForm.ts';
import { bandForms } from './bandForms.ts';

const number = fc.double({ min: -3, max: 3, noNaN: true });
const stretch = fc.double({ min: 1, max: 3, noNaN: true });

/** Forces as printed by Treloar 1943, Rivlin 1948, Yeoh 1990 and Ogden 1972 (docs/model.md, "band"), with J = x^2 + 2/x - 3. */
const printed: Record<BandForm['name'], (x: number, ...parameters: number[]) => number> = {
  neoHookean: (x, mu) => mu * (x - x ** -2),
  mooneyRivlin: (x, c1, c2) => 2 * (x - x ** -2) * (c1 + c2 / x),
  yeoh: (x, c10, c20, c30) => {
    const j = x ** 2 + 2 / x - 3;
    return 2 * (x - x ** -2) * (c10 + 2 * c20 * j + 3 * c30 * j ** 2);
  },
  ogden1: (x, m, alpha) => m * (x ** (alpha - 1) - x ** (-alpha / 2 - 1)),
  ogden2: (x, m1, alpha1, m2, alpha2) => printed.ogden1(x, m1, alpha1) + printed.ogden1(x, m2, alpha2),
};

describe.each(bandForms)('the form $name', (form) => {
  const parameters = fc.array(number, {
    minLength: form.parameterNames.length,
    maxLength: form.parameterNames.length,
  });

  it('is the published one', () => {
    fc.assert(
      fc.property(parameters, stretch, (values, x) => {
        expect(form.force(values)(x)).toBeCloseTo(printed[form.name](x, ...values), 9);
      }),
    );
  });

  it('changes with each parameter as its gradient says', () => {
    const step = 1e-5;
    fc.assert(
      fc.property(parameters, stretch, (values, x) => {
        const gradient = form.gradient(values, x);
        expect(gradient).toHaveLength(values.length);
        for (const [k, slope] of gradient.entries()) {
          const [less, more] = [-step, step].map((by) => form.force(values.with(k, values[k]! + by))(x));
          expect(Math.abs(slope - (more! - less!) / (2 * step))).toBeLessThan(1e-5 * (1 + Math.abs(slope)));
        }
      }),
    );
  });
});

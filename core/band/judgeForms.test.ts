import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import type { BandReading } from './BandCurve.ts';
import { fitForm } from './fitForm.ts';
import { judgeForms } from './judgeForms.ts';
import { mooneyRivlin } from './mooneyRivlin.ts';
import { neoHookean } from './neoHookean.ts';

const readings = readingsOf(2, 7);
/** More than are left out one by one, each by a fit of its own. */
const manyReadings = readingsOf(41, 90);

function readingsOf(minLength: number, maxLength: number): fc.Arbitrary<BandReading[]> {
  return fc.array(fc.double({ min: -0.1, max: 0.1, noNaN: true }), { minLength, maxLength }).map((errors) =>
    errors.map((error, i) => {
      const lengthM = 1.15 + (1.05 * i) / maxLength;
      return { lengthM, forceN: 150 * (lengthM - lengthM ** -2) * (1 + error), direction: 'loading' };
    }),
  );
}

// A Mooney-Rivlin curve turns where C1 (1 + 2 / x^3) + 3 C2 / x^4 = 0, its derivative by the stretch x.
const offered = (turnsAt: number, longest: number) => {
  const c2 = 100;
  const c1 = (-3 * c2 * turnsAt ** -4) / (1 + 2 * turnsAt ** -3);
  const list = [0.2, 0.4, 0.6, 0.8, 1].map((share): BandReading => {
    const x = 1 + share * (longest - 1);
    return { lengthM: x, forceN: 2 * (x - x ** -2) * (c1 + c2 / x), direction: 'loading' };
  });
  return judgeForms(1, list).some(({ form }) => form === mooneyRivlin);
};

/** Loops between neo-Hookean and Mooney-Rivlin, read to 3 %: either form may foretell them better. */
const doubtful = fc
  .record({
    c2: fc.integer({ min: 0, max: 60 }),
    errors: fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 6, maxLength: 9 }),
  })
  .map(({ c2, errors }) =>
    errors.map((error, i): BandReading => {
      const x = 1.15 + (1.2 * i) / errors.length;
      const forceN = 2 * (x - x ** -2) * (75 + c2 / x) * (1 + error / 1000);
      return { lengthM: x, forceN, direction: 'loading' };
    }),
  );
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('judgeForms', () => {
  it('foretells each reading from the others alone, as the closed form of a fit of one stiffness does', () => {
    fc.assert(
      fc.property(fc.oneof(readings, manyReadings), (list) => {
        const judged = judgeForms(1, list).find(({ form }) => form === neoHookean)!;
        // mu = sum(w x F) / sum(w x^2) with x = lambda - lambda^-2 and w = 1 / ((0.015 F)^2 + 2^2).
        const rows = list.map(({ lengthM, forceN }) => ({
          x: lengthM - lengthM ** -2,
          forceN,
          w: 1 / ((0.015 * forceN) ** 2 + 4),
        }));
        rows.forEach((left, i) => {
          const others = rows.filter((row) => row !== left);
          const top = others.reduce((sum, { w, x, forceN }) => sum + w * x * forceN, 0);
          const foretold = (left.x * top) / others.reduce((sum, { w, x }) => sum + w * x * x, 0);
          expect(judged.errors[i]! - left.w * (foretold - left.forceN) ** 2).toBeCloseTo(0, 4);
        });
        // As a share: root mean square of the misses over that of the forces.
        const missSquares = rows.reduce((sum, { w }, i) => sum + judged.errors[i]! / w, 0);
        const forceSquares = rows.reduce((sum, { forceN }) => sum + forceN ** 2, 0);
        expect(judged.leftOutShare).toBeCloseTo(Math.sqrt(missSquares / forceSquares), 9);
      }),
    );
  });

  it('leaves the choice to the simplest form whose excess over the best is within one standard error of it', () => {
    // Standard error of a mean: root of the sum of squares about it over n (n - 1); docs/model.md, "band".
    fc.assert(
      fc.property(doubtful, (list) => {
        const judged = judgeForms(1, list);
        const least = judged.reduce((best, one) => (mean(one.errors) < mean(best.errors) ? one : best));
        const within = judged.filter(({ errors }) => {
          const excess = errors.map((error, i) => error - least.errors[i]!);
          const squares = excess.map((each) => (each - mean(excess)) ** 2);
          const error = Math.sqrt(mean(squares) / (excess.length - 1));
          return mean(excess) <= Math.max(error, 1e-4);
        });
        const fewest = Math.min(...within.map(({ form }) => form.parameterNames.length));
        const { model } = fitForm(1, list);
        expect(within.find(({ form }) => form.name === model)?.form.parameterNames).toHaveLength(fewest);
      }),
      { numRuns: 60 },
    );
  });

  it('takes twice the work for twice the readings, not four times', () => {
    const gradients = vi.spyOn(neoHookean, 'gradient');
    const workFor = (count: number) => {
      gradients.mockClear();
      judgeForms(
        1,
        Array.from({ length: count }, (_, i) => {
          const lengthM = 1.1 + i / count;
          return {
            lengthM,
            forceN: 150 * (lengthM - lengthM ** -2) * (1 + 0.02 * Math.sin(i)),
            direction: 'loading',
          };
        }),
      );
      return gradients.mock.calls.length;
    };
    expect(workFor(800) / workFor(200)).toBeLessThan(6);
    gradients.mockRestore();
  });

  it('offers no form with as many parameters as lengths, however often each was read', () => {
    fc.assert(
      fc.property(readings, (list) => {
        const twice = list.flatMap((reading) => [reading, reading]);
        for (const { form } of judgeForms(1, twice)) {
          expect(form.parameterNames.length).toBeLessThan(list.length);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('offers no form that falls below three times the rest length, or below 1.3 times the longest reading', () => {
    expect(offered(2.9, 2)).toBe(false);
    expect(offered(3.1, 2)).toBe(true);
    // 1.3 times 2.6 is 3.38.
    expect(offered(3.25, 2.6)).toBe(false);
    expect(offered(3.5, 2.6)).toBe(true);
  });
});

import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { evenness, leastUnevenness } from './evenness.ts';

const part = fc.double({ min: 0.01, max: 2, noNaN: true });

/** Masses tried between two ends. */
const STEPS = 2000;

const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

it('is the squared spread over the squared mean at one mass, and no mass between two ends is more even than its least', () => {
  fc.assert(
    fc.property(
      // Shares per kg and of the gear at three heights.
      fc.array(fc.tuple(part, part), { minLength: 3, maxLength: 3 }),
      fc.double({ min: 1, max: 50, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      (rows, fromKg, widthKg) => {
        const [p, q] = [mean(rows.map(([perKg]) => perKg)), mean(rows.map(([, gear]) => gear))];
        const spread = {
          curvature: mean(rows.map(([perKg]) => (perKg - p) ** 2)),
          tilt: mean(rows.map(([perKg, gear]) => (perKg - p) * (gear - q))),
          level: mean(rows.map(([, gear]) => (gear - q) ** 2)),
        };
        const even = evenness(spread, p, q, 0.01);
        const byDefinition = (kg: number) => {
          const shares = rows.map(([perKg, gear]) => perKg * kg + gear);
          const middle = mean(shares);
          return Math.sqrt(mean(shares.map((share) => (share - middle) ** 2)) / middle ** 2 + 0.01);
        };
        const least = leastUnevenness(even, fromKg, fromKg + widthKg);
        // Even in one over the mean share, where the square is a parabola: so no least lies far from a mass that is tried.
        const [most, fewest] = [fromKg, fromKg + widthKg].map((kg) => 1 / (p * kg + q)) as [number, number];
        let tried = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= STEPS; i++) {
          const kg = (1 / (fewest + ((most - fewest) * i) / STEPS) - q) / p;
          if (i % 100 === 0) expect(leastUnevenness(even, kg, kg)).toBeCloseTo(byDefinition(kg), 6);
          tried = Math.min(tried, byDefinition(kg));
        }
        expect(least).toBeLessThanOrEqual(tried + 1e-6);
        expect(least).toBeGreaterThan(0.98 * tried);
      },
    ),
  );
});

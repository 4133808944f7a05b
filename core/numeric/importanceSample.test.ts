import { describe, expect, it } from 'vitest';
import { doubted, importanceSample } from './importanceSample.ts';

/** Mean (2, -1), standard deviations 0.5 and 2, correlation 0.6. */
function slantedNormal(x: Float64Array): number {
  const [a, b] = [(x[0]! - 2) / 0.5, (x[1]! + 1) / 2];
  return -(a * a - 2 * 0.6 * a * b + b * b) / (2 * (1 - 0.6 ** 2));
}

describe('importanceSample', () => {
  const first = { mean: Float64Array.of(0, 0), root: Float64Array.of(1, 0, 0, 1) };
  const effort = { count: 100, rounds: 8, enough: 500 };

  it('finds a slanted normal that lies beside the first proposal', () => {
    const { points, weights, effective } = importanceSample(first, [1.16, 1.16], effort, slantedNormal);
    const mean = (of: (x: Float64Array) => number) =>
      points.reduce((sum, x, i) => sum + weights[i]! * of(x), 0);
    expect(mean((x) => x[0]!)).toBeCloseTo(2, 1);
    expect(Math.abs(mean((x) => x[1]!) + 1)).toBeLessThan(0.15);
    expect(Math.sqrt(mean((x) => (x[0]! - 2) ** 2))).toBeCloseTo(0.5, 1);
    expect(Math.abs(mean((x) => (x[1]! + 1) ** 2) / 4 - 1)).toBeLessThan(0.1);
    expect(effective).toBeGreaterThan(300);
  });

  it('weighs nothing where the density is nought or unknown', () => {
    const { points, weights } = importanceSample(first, [1.16, 1.16], effort, (x) =>
      x[0]! < 0 ? Number.NaN : -0.5 * (x[0]! ** 2 + x[1]! ** 2),
    );
    points.forEach((x, i) => {
      if (x[0]! < 0) expect(weights[i]).toBe(0);
    });
    // Mean of a half-normal: sqrt(2 / pi).
    const mean = points.reduce((sum, x, i) => sum + weights[i]! * x[0]!, 0);
    expect(Math.abs(mean - Math.sqrt(2 / Math.PI))).toBeLessThan(0.05);
  });
});

describe('doubted', () => {
  const uneven = { weights: Float64Array.of(0.7, 0.1, 0.1, 0.1), effective: 4 / 3.64 };

  it('evens weights out, the more the less they are worth, and keeps their order', () => {
    const { weights, effective } = doubted(uneven, 30);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(weights[0]!).toBeGreaterThan(weights[1]!);
    expect(effective).toBeGreaterThan(3);
  });

  it('leaves many answers as they are', () => {
    const { weights } = doubted({ weights: uneven.weights, effective: 1e6 }, 30);
    weights.forEach((weight, i) => {
      expect(weight).toBeCloseTo(uneven.weights[i]!, 4);
    });
  });
});

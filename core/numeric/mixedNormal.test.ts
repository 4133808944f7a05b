import { expect, test } from 'vitest';
import { mixedNormal } from './mixedNormal.ts';

// Closed form of two points: mean p b, variance p (1 - p) (b - a)^2 about them.
test('two sure values make the mean and variance of a coin', () => {
  const low = { mean: Float64Array.of(0, 0), covariance: new Float64Array(4) };
  const high = { mean: Float64Array.of(1, -2), covariance: new Float64Array(4) };
  const { mean, covariance } = mixedNormal([low, high], [0.7, 0.3]);
  expect([...mean]).toEqual([0.3, -0.6]);
  [0.21, -0.42, -0.42, 0.84].forEach((value, at) => expect(covariance[at]).toBeCloseTo(value, 12));
});

test('a mixture of one distribution with itself is that one', () => {
  const one = { mean: Float64Array.of(2, 3), covariance: Float64Array.of(1, 0.5, 0.5, 4) };
  const { mean, covariance } = mixedNormal([one, one], [0.25, 0.75]);
  expect([...mean]).toEqual([2, 3]);
  expect([...covariance]).toEqual([1, 0.5, 0.5, 4]);
});

import { assert, double, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NORMAL_95, normalCdf, normalQuantile } from './normal.ts';

describe('the normal distribution', () => {
  // Abramowitz & Stegun 1964, table 26.1: P(x).
  test.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.97724986805182],
    [3, 0.9986501019684],
    [4, 0.99996832875817],
  ])('has the tabulated value at %d', (x, tabulated) => {
    expect(normalCdf(x)).toBeCloseTo(tabulated, 13);
    expect(normalCdf(-x)).toBeCloseTo(1 - tabulated, 13);
  });

  test('gives its quantile back', () => {
    assert(
      property(double({ min: 1e-9, max: 0.5, noNaN: true }), (tail) => {
        expect(normalCdf(normalQuantile(tail)) / tail).toBeCloseTo(1, 9);
        expect(normalQuantile(1 - tail)).toBeCloseTo(-normalQuantile(tail), 6);
      }),
    );
  });

  test('holds 95 % within its range of 95 %', () => {
    expect(normalCdf(NORMAL_95) - normalCdf(-NORMAL_95)).toBeCloseTo(0.95, 14);
  });

  test('refuses what is no probability', () => {
    expect(() => normalQuantile(0)).toThrow(RangeError);
    expect(() => normalQuantile(1.2)).toThrow(RangeError);
  });
});

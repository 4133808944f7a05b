import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentTQuantile } from './studentT.ts';

describe('studentTQuantile', () => {
  it('has the closed forms of one, two and four degrees of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (p) => {
        const one = Math.tan(Math.PI * (p - 0.5));
        const a = 4 * p * (1 - p);
        const two = (2 * (p - 0.5)) / Math.sqrt(a / 2);
        // Shaw 2006, J Comput Finance 9(4):37-73: four degrees of freedom.
        const q = (4 / Math.sqrt(a)) * Math.cos(Math.acos(Math.sqrt(a)) / 3);
        const four = Math.sign(p - 0.5) * Math.sqrt(Math.max(q - 4, 0));
        expect(studentTQuantile(p, 1)).toBeCloseTo(one, 7);
        expect(studentTQuantile(p, 2)).toBeCloseTo(two, 9);
        expect(Math.abs(studentTQuantile(p, 4) - four)).toBeLessThan(1e-6);
      }),
    );
  });

  it.each([
    // Student's table as printed in statistics texts, three decimals.
    [0.975, 1, 12.706],
    [0.975, 2, 4.303],
    [0.975, 5, 2.571],
    [0.975, 10, 2.228],
    [0.975, 30, 2.042],
    [0.95, 3, 2.353],
    [0.995, 8, 3.355],
  ])('P = %f with %i degrees of freedom is %f', (p, nu, t) => {
    expect(studentTQuantile(p, nu)).toBeCloseTo(t, 3);
  });

  it('is odd about a half and tightens with more degrees of freedom', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.501, max: 0.9999, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (p, nu) => {
          const t = studentTQuantile(p, nu);
          expect(studentTQuantile(1 - p, nu) / -t).toBeCloseTo(1, 8);
          expect(studentTQuantile(p, nu + 1)).toBeLessThan(t);
        },
      ),
    );
    expect(studentTQuantile(0.5, 3)).toBe(0);
  });

  it.each([
    [0, 3],
    [1, 3],
    [Number.NaN, 3],
    [0.9, 0],
    [0.9, 2.5],
  ])('refuses P = %f with %f degrees of freedom', (p, nu) => {
    expect(() => studentTQuantile(p, nu)).toThrow(RangeError);
  });
});

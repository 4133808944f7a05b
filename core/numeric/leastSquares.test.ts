import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LeastSquaresFit, leastSquares } from './leastSquares.ts';

function settled(fit: LeastSquaresFit): Extract<LeastSquaresFit, { ok: true }> {
  if (!fit.ok) throw new Error(fit.reason);
  return fit;
}

/** `a exp(b x)`, the classic that goes wrong from a bad start. */
function exponential(xs: readonly number[], values: readonly number[], starts: number[][], upper = Infinity) {
  return leastSquares({
    values,
    sds: xs.map(() => 1),
    model: ([a, b]) => xs.map((x) => a! * Math.exp(b! * x)),
    jacobian: ([a, b]) => xs.map((x) => [Math.exp(b! * x), a! * x * Math.exp(b! * x)]),
    lower: [-Infinity, -5],
    upper: [Infinity, upper],
    starts,
  });
}

function line(xs: readonly number[], values: readonly number[], sds: readonly number[], lower = -Infinity) {
  return leastSquares({
    values,
    sds,
    model: ([a, b]) => xs.map((x) => a! + b! * x),
    jacobian: () => xs.map((x) => [1, x]),
    lower: [lower, lower],
    upper: [Infinity, Infinity],
    starts: [[1, 1]],
  });
}

function shape(x: number, b: number): number {
  return x ** (b - 1) - x ** (-b / 2 - 1);
}

const figure = fc.double({ min: -100, max: 100, noNaN: true });

describe('leastSquares', () => {
  it('gives the textbook line, misfit and covariance', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ y: figure, sd: fc.double({ min: 0.1, max: 10, noNaN: true }) }), {
          minLength: 3,
          maxLength: 12,
        }),
        (points) => {
          const xs = points.map((_, i) => i);
          const ys = points.map((p) => p.y);
          const sds = points.map((p) => p.sd);
          const fit = settled(line(xs, ys, sds));
          // Closed form: weighted sums S, Sx, Sy, Sxx, Sxy.
          const weighted = (f: (i: number) => number) => xs.reduce((sum, i) => sum + f(i) / sds[i]! ** 2, 0);
          const s = weighted(() => 1);
          const sx = weighted((i) => i);
          const sxx = weighted((i) => i * i);
          const sy = weighted((i) => ys[i]!);
          const sxy = weighted((i) => i * ys[i]!);
          const det = s * sxx - sx * sx;
          const expected = [(sxx * sy - sx * sxy) / det, (s * sxy - sx * sy) / det];
          const allowed = [Math.sqrt(sxx / det), Math.sqrt(s / det)].map((error) => 1e-3 * error);
          expect(Math.abs(fit.parameters[0]! - expected[0]!)).toBeLessThan(allowed[0]! * (1 + fit.chiSquare));
          expect(Math.abs(fit.parameters[1]! - expected[1]!)).toBeLessThan(allowed[1]! * (1 + fit.chiSquare));
          expect(fit.covariance[0]![0]! / (sxx / det)).toBeCloseTo(1, 8);
          expect(fit.covariance[1]![1]! / (s / det)).toBeCloseTo(1, 8);
          expect(fit.covariance[0]![1]! / (-sx / det)).toBeCloseTo(1, 8);
        },
      ),
    );
  });

  it('finds an exponential that made the values, from any of several starts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        (a, b) => {
          const xs = [0, 0.5, 1, 1.5, 2];
          const fit = settled(
            exponential(
              xs,
              xs.map((x) => a * Math.exp(b * x)),
              [
                [1, 0],
                [5, -1],
                [5, 1],
              ],
            ),
          );
          expect(fit.parameters[0]! / a).toBeCloseTo(1, 5);
          expect(fit.parameters[1]!).toBeCloseTo(b, 5);
        },
      ),
    );
  });

  it('stops at a bound, with the others at their best there', () => {
    const xs = [0, 1, 2];
    const fit = settled(line(xs, [-2, 0, 2], [1, 1, 1], 0));
    // With the intercept held at 0 the slope is sum(xy)/sum(xx) = 4/5.
    expect(fit.parameters[0]).toBe(0);
    expect(fit.parameters[1]).toBeCloseTo(0.8, 9);
    expect(fit.covariance[0]).toEqual([0, 0]);
    expect(fit.covariance[1]![1]).toBeCloseTo(1 / 5, 9);
  });

  it('settles on a bound that a full step would overshoot, the other parameter nearly its mirror', () => {
    // a (x^(b-1) - x^(-b/2-1)) on points that ask for b near 0.4, with b held at 0.5 and above.
    const xs = [1.12, 1.24, 1.39, 1.61];
    const values = [51.66, 84.87, 118.08, 151.29];
    const sds = values.map((value) => Math.hypot(0.015 * value, 2));
    const fit = settled(
      leastSquares({
        values,
        sds,
        model: ([a, b]) => xs.map((x) => a! * shape(x, b!)),
        jacobian: ([a, b]) =>
          xs.map((x) => [shape(x, b!), a! * Math.log(x) * (x ** (b! - 1) + x ** (-b! / 2 - 1) / 2)]),
        lower: [0, 0.5],
        upper: [Infinity, 12],
        starts: [[160, 1.5]],
      }),
    );
    expect(fit.parameters[1]).toBe(0.5);
    // The other parameter alone is a weighted mean.
    const weight = sds.map((sd) => 1 / sd ** 2);
    const top = xs.reduce((sum, x, i) => sum + weight[i]! * shape(x, 0.5) * values[i]!, 0);
    const bottom = xs.reduce((sum, x, i) => sum + weight[i]! * shape(x, 0.5) ** 2, 0);
    expect(fit.parameters[0]! / (top / bottom)).toBeCloseTo(1, 5);
  });

  it('says so when the values do not fix the parameters', () => {
    expect(line([1, 1, 1], [2, 3, 4], [1, 1, 1])).toEqual({
      ok: false,
      reason: 'the values do not fix every parameter',
    });
  });

  it('says so when the model is not finite at the start, and when there is no start', () => {
    expect(exponential([1000], [1], [[1, 2]])).toMatchObject({
      ok: false,
      reason: 'the model is not finite there',
    });
    expect(exponential([1], [1], [])).toMatchObject({ ok: false });
  });

  it('answers with finite numbers or not at all', () => {
    fc.assert(
      fc.property(fc.array(figure, { minLength: 2, maxLength: 6 }), figure, figure, (ys, a, b) => {
        const fit = exponential(
          ys.map((_, i) => i),
          ys,
          [[a, Math.max(Math.min(b, 3), -3)]],
          3,
        );
        if (!fit.ok) expect(fit.reason).not.toBe('');
        else
          expect([fit.chiSquare, ...fit.parameters, ...fit.covariance.flat()].every(Number.isFinite)).toBe(
            true,
          );
      }),
    );
  });
});

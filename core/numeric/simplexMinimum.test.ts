import { array, assert, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cholesky } from './cholesky.ts';
import { gradient, hessian } from './differences.ts';
import { positiveInverse } from './positiveInverse.ts';
import { simplexMinimum } from './simplexMinimum.ts';
import { inverseOfSquare, solveLower, solveUpper } from './triangle.ts';

/** Entries of a 3 x 3 matrix A; `A A^T + I` is then symmetric and positive. */
const positive = array(double({ min: -2, max: 2, noNaN: true }), { minLength: 9, maxLength: 9 }).map((a) =>
  [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => [0, 1, 2].reduce((sum, k) => sum + a[3 * i + k]! * a[3 * j + k]!, i === j ? 1 : 0)),
  ),
);

const times = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]) =>
  a.map((row) => row.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));
const expectUnit = (matrix: readonly (readonly number[])[]) =>
  matrix.forEach((row, i) => row.forEach((value, j) => expect(value).toBeCloseTo(i === j ? 1 : 0, 8)));

const valley = ([x, y]: readonly number[]) => 100 * (y! - x! ** 2) ** 2 + (1 - x!) ** 2;
const bowl = ([x, y]: readonly number[]) => Math.exp(x!) - x! + 2 * y! ** 2 + 0.5 * x! * y!;

describe('the least of a function', () => {
  it('is found at the end of the bent valley of Rosenbrock 1960 (Comput J 3:175), from his own start', () => {
    const [x, y] = simplexMinimum(valley, [-1.2, 1], 0.5, 1e-14);
    expect(x).toBeCloseTo(1, 5);
    expect(y).toBeCloseTo(1, 5);
  });

  it('has a gradient of nought and the curvature of its closed form', () => {
    const steps = [1e-3, 1e-3];
    // At (0, 0): gradient (0, 0), second derivatives 1, 4 and 0.5.
    gradient(bowl, [0, 0], steps).forEach((slope) => expect(slope).toBeCloseTo(0, 5));
    const curvature = hessian(bowl, [0, 0], steps);
    expect(curvature.flat().map((value) => Number(value.toFixed(4)))).toEqual([1, 0.5, 0.5, 4]);
  });
});

describe('inverses', () => {
  it('a positive matrix times its inverse is one, by eigenvectors and by triangles', () => {
    assert(
      property(positive, (matrix) => {
        expectUnit(times(matrix, positiveInverse(matrix)));
        expectUnit(times(matrix, inverseOfSquare(cholesky(Float64Array.from(matrix.flat()), 3), 3)));
      }),
    );
  });

  it('leaves flat and falling directions out', () => {
    // Eigenvalues 3 along (1, 1), -1 along (1, -1).
    expect(
      positiveInverse([
        [1, 2],
        [2, 1],
      ])
        .flat()
        .map((value) => Number(value.toFixed(12))),
    ).toEqual([1 / 6, 1 / 6, 1 / 6, 1 / 6].map((value) => Number(value.toFixed(12))));
    expect(
      positiveInverse([
        [0, 0],
        [0, 2],
      ]),
    ).toEqual([
      [0, 0],
      [0, 0.5],
    ]);
  });

  it('a triangle is undone from either side', () => {
    const lower = Float64Array.of(2, 0, 1, 3);
    expect([...solveLower(lower, 2, [4, 8])]).toEqual([2, 2]);
    expect([...solveUpper(lower, 2, [5, 6])]).toEqual([1.5, 2]);
  });
});

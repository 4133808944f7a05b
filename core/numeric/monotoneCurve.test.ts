import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { monotoneCurve } from './monotoneCurve.ts';

const points = fc
  .uniqueArray(fc.record({ x: fc.integer({ min: -50, max: 50 }), y: fc.integer({ min: -100, max: 100 }) }), {
    selector: (p) => p.x,
    minLength: 2,
    maxLength: 8,
  })
  .map((list) => list.toSorted((a, b) => a.x - b.x));

function through(list: readonly { x: number; y: number }[]) {
  return monotoneCurve(
    list.map((p) => p.x),
    list.map((p) => p.y),
  );
}

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('monotoneCurve', () => {
  it('passes through its points and never leaves the box between two of them', () => {
    fc.assert(
      fc.property(points, share, (list, t) => {
        const curve = through(list);
        list.forEach((p) => expect(curve.at(p.x)).toBeCloseTo(p.y, 9));
        list.slice(1).forEach((right, i) => {
          const left = list[i]!;
          const y = curve.at(left.x + t * (right.x - left.x));
          expect(y).toBeGreaterThanOrEqual(Math.min(left.y, right.y) - 1e-9);
          expect(y).toBeLessThanOrEqual(Math.max(left.y, right.y) + 1e-9);
        });
      }),
    );
  });

  it('has the slope it says it has, everywhere', () => {
    fc.assert(
      fc.property(points, fc.double({ min: -60, max: 60, noNaN: true }), (list, x) => {
        fc.pre(list.every((p) => Math.abs(p.x - x) > 1e-3));
        const curve = through(list);
        const h = 1e-5;
        expect((curve.at(x + h) - curve.at(x - h)) / (2 * h)).toBeCloseTo(curve.slopeAt(x), 3);
      }),
    );
  });

  it('goes on straight beyond its ends', () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0.1, max: 100, noNaN: true }), (list, far) => {
        const curve = through(list);
        for (const [end, out] of [
          [list[0]!, -far],
          [list.at(-1)!, far],
        ] as const) {
          expect(curve.at(end.x + out)).toBeCloseTo(end.y + curve.slopeAt(end.x) * out, 6);
        }
      }),
    );
  });

  it('is a straight line through points on a line, two included, in whatever order they come', () => {
    fc.assert(
      fc.property(points, share, (list, t) => {
        const onLine = list.map(({ x }) => ({ x, y: 3 * x - 7 }));
        const x = -60 + 120 * t;
        expect(through(onLine.toReversed()).at(x)).toBeCloseTo(3 * x - 7, 8);
      }),
    );
  });

  it('refuses one point, and two at one place', () => {
    expect(() => monotoneCurve([1], [1])).toThrow(RangeError);
    expect(() => monotoneCurve([1, 1], [1, 2])).toThrow(RangeError);
  });
});

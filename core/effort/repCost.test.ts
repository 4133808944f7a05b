import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { repCost, repCosts } from './repCost.ts';

const bends = fc.double({ min: -0.6, max: 0.6, noNaN: true });

test('a set of eight costs nearly the same whatever the bend', () => {
  // The mean of x^b over 1 to 7 over the geometric mean to the power b: exp(b^2 var(ln x) / 2) to second order.
  const lns = [1, 2, 3, 4, 5, 6, 7].map(Math.log);
  const middle = lns.reduce((sum, ln) => sum + ln, 0) / lns.length;
  const variance = lns.reduce((sum, ln) => sum + (ln - middle) ** 2, 0) / lns.length;
  fc.assert(
    fc.property(bends, (bend) => {
      const cost = lns.reduce((sum, _, i) => sum + repCost(i + 1, bend), 0) / lns.length;
      expect(Math.abs(cost - Math.exp((bend * bend * variance) / 2))).toBeLessThan(0.03);
    }),
  );
});

test('with a bend above nought each rep costs more than the one before, below nought less', () => {
  fc.assert(
    fc.property(bends, fc.integer({ min: 1, max: 30 }), (bend, rep) => {
      if (Math.abs(bend) < 1e-6) return;
      expect(Math.sign(repCost(rep + 1, bend) - repCost(rep, bend))).toBe(Math.sign(bend));
    }),
  );
});

test('costs worked out once for a bend are those of each rep, in whatever order they are asked for', () => {
  fc.assert(
    fc.property(bends, fc.array(fc.integer({ min: 1, max: 30 })), (bend, reps) => {
      expect(reps.map(repCosts(bend))).toEqual(reps.map((rep) => repCost(rep, bend)));
    }),
  );
  // (rep / 3.38)^bend (docs/model.md, "effort").
  expect([repCosts(0)(7), repCost(7, 1), repCost(1, -1)]).toEqual(
    [1, 7 / 3.38, 3.38].map((x) => expect.closeTo(x, 12)),
  );
});

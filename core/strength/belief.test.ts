import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beliefOf, beliefOfMixture, normalBelief, sdOfBelief } from './belief.ts';
import { normalLattice, STEP_LN, sampled } from './lattice.ts';

// Quantiles of the normal distribution: 1.281552 at 0.9, 1.959964 at 0.975 (Abramowitz & Stegun 1964, table 26.5; from memory).
const [AT_90, AT_975] = [1.281552, 1.959964];

const even = (first: number) => sampled(first, 100, () => 1);
const at = (point: number) => expect.closeTo(Math.exp((point - 0.5) * STEP_LN), 6);

describe('what is believed of a quantity', () => {
  it('has the ranges of the normal where it is normal, and gives its spread back', () => {
    const belief = normalBelief(5, 0.2);
    expect(belief.median).toBeCloseTo(5, 9);
    expect([belief.low80, belief.high80]).toEqual(
      [5 - 0.2 * AT_90, 5 + 0.2 * AT_90].map((x) => expect.closeTo(x, 6)),
    );
    expect([belief.low95, belief.high95]).toEqual(
      [5 - 0.2 * AT_975, 5 + 0.2 * AT_975].map((x) => expect.closeTo(x, 6)),
    );
    expect(sdOfBelief(belief)).toBeCloseTo(0.2, 9);
  });

  it('of equally likely values is read between the two in whose middle a share of them lies', () => {
    // Of 0 to 99, each standing for a hundredth about it: half lie below 49.5, a tenth below 9.5, a fortieth below 2.
    const values = Array.from({ length: 100 }, (_, i) => (37 * i) % 100);
    expect(beliefOf(values)).toEqual({ median: 49.5, low80: 9.5, high80: 89.5, low95: 2, high95: 97 });
    const low = beliefOf([3, 1]);
    expect([low.low95, low.median, low.high95]).toEqual([1, 2, 3]);
    expect(beliefOf([7])).toEqual({ median: 7, low80: 7, high80: 7, low95: 7, high95: 7 });
  });

  it('of strength on a grid is that of the distribution on it, wherever its points lie', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 600 }),
        fc.integer({ min: 3, max: 15 }),
        fc.integer({ min: 0, max: 9 }),
        (mean, sd, off) => {
          const strength = normalLattice(mean / 100, sd / 100);
          const moved = { ...strength, first: strength.first + off / 10 };
          const { median, low80, high95 } = beliefOfMixture([{ weight: 2, strength: moved }], (ln) => ln);
          const middle = (mean + off / 10) / 100;
          expect(Math.abs(median - middle)).toBeLessThan(0.0005);
          expect(Math.abs(low80 - (middle - (AT_90 * sd) / 100))).toBeLessThan(0.002);
          expect(Math.abs(high95 - (middle + (AT_975 * sd) / 100))).toBeLessThan(0.003);
        },
      ),
    );
  });

  it('of several answers counts each by its weight, and is told on the scale of the quantity', () => {
    // Three quarters evenly over 100 points from ln 4 on, a quarter over 100 from ln 6 on; a point stands for half a step to either side.
    const parts = [
      { weight: 3, strength: even(400) },
      { weight: 1, strength: even(600) },
    ];
    const { median, low80, high80 } = beliefOfMixture(parts, Math.exp);
    expect([low80, median, high80]).toEqual([
      at(400 + 100 * (0.1 / 0.75)),
      at(400 + 100 * (0.5 / 0.75)),
      at(660),
    ]);
  });
});

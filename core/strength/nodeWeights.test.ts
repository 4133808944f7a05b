import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { nodeWeights, reboundOf } from './nodeWeights.ts';
import { type Parameters, populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { shapeNodes } from './response.ts';

const shape = populationShape('squat');
const at = (changed: Partial<Parameters>): Parameters => ({ ...populationPrior('squat').mean, ...changed });

/** What is read of a quantity that was tabulated at the nodes: `quantity` of ln top speed, slope and rebound. */
function read(
  quantity: (lnMaxSpeed: number, slope: number, rebound: number) => number,
  parameters: Parameters,
  start: Rigging['start'] = 'free',
  of = shape,
): number {
  const { lnMaxSpeed, slope, rebound, outerSlopes, outerRebounds } = shapeNodes(of, start);
  const [low, middle, high] = lnMaxSpeed;
  // All of slope by rebound at the middle top speed, some of them below and some above it (response.ts).
  const values = [
    ...slope.flatMap((by) => rebound.map((own) => quantity(middle, by, own))),
    ...[low, high].flatMap((speed) =>
      outerSlopes.flatMap((j) => outerRebounds.map((k) => quantity(speed, slope[j]!, rebound[k]!))),
    ),
  ];
  const weights = nodeWeights(parameters, of, start);
  expect(weights).toHaveLength(values.length);
  return weights.reduce((sum, weight, i) => sum + weight * values[i]!, 0);
}

const coefficients = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 6, maxLength: 6 });
const slopes = fc.integer({ min: -75, max: 75 }).map((n) => n / 100);

const slopeItself = (_: number, s: number) => s;

const peak = (_: number, s: number) => (s === 0 ? 1 : 0);

const withoutRebound = (v: number, s: number) => 2 + s * s + v * s;

describe('a quantity read off the nodes', () => {
  // Overhauser 1968: parabolas through neighbouring nodes, blended; where all of them are the same it is that parabola.
  it.each(['free', 'box'] as const)(
    'from a %s start is a parabola where it is one, in slope, rebound and top speed, and up to a step beyond the nodes',
    (start) => {
      const lnRebounds = fc.integer({ min: -60, max: 60 }).map((n) => n / 100);
      fc.assert(
        fc.property(
          coefficients,
          slopes,
          lnRebounds,
          slopes,
          ([a, b, c, d, e, f], slope, lnRebound, lnMaxSpeed) => {
            const quantity = (v: number, s: number, r: number) =>
              1 + a! * s + b! * s * s + (c! + d! * s) * r + v * (e! + f! * v + a! * s + b! * r);
            const parameters = at({ slope, lnRebound, lnMaxSpeed });
            const exact = quantity(lnMaxSpeed, slope, reboundOf(parameters, shape, start));
            expect(read(quantity, parameters, start)).toBeCloseTo(exact, 8);
          },
        ),
      );
    },
  );

  it('is held further out than a step beyond the nodes', () => {
    for (const slope of [0.75, 0.8, 3]) expect(read(slopeItself, at({ slope }))).toBeCloseTo(0.75, 12);
    for (const slope of [-0.75, -0.8, -3]) expect(read(slopeItself, at({ slope }))).toBeCloseTo(-0.75, 12);
  });

  it('runs through every node, and smoothly between two of them whatever their neighbours are', () => {
    // One node stands out: halfway to the next one parabolas through three nodes give 3/8 and 6/8 of it, their mean is 9/16.
    for (const slope of [-0.5, -0.25, 0, 0.25, 0.5])
      expect(read(peak, at({ slope }))).toBeCloseTo(slope === 0 ? 1 : 0, 12);
    for (const slope of [-0.125, 0.125]) expect(read(peak, at({ slope }))).toBeCloseTo(9 / 16, 12);
    // Between the outer two there is one parabola alone: through the peak, 0 and 0 it is -1/8 halfway.
    for (const slope of [-0.375, 0.375]) expect(read(peak, at({ slope }))).toBeCloseTo(-1 / 8, 12);
  });

  it('reaches from no rebound at all to all of the free one where a start holds the bar, and to twice it where none does', () => {
    for (const [start, most] of [
      ['box', 1],
      ['free', 2],
    ] as const) {
      const { rebound } = shapeNodes(shape, start);
      expect(rebound.at(-1)! / shape.rebound).toBeCloseTo(most, 12);
      expect(rebound).toEqual(rebound.toSorted((a, b) => a - b));
    }
  });

  it('is one row for every slope where nothing is stored on the way down', () => {
    const stiff = { ...shape, rebound: 0 };
    expect(shapeNodes(stiff, 'free').rebound).toEqual([0]);
    expect(read(withoutRebound, at({ slope: 0.3, lnMaxSpeed: 0.2 }), 'free', stiff)).toBeCloseTo(2.15, 9);
  });
});

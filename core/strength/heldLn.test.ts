import { expect, test } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { heldLn } from './heldLn.ts';
import { populationPrior } from './parameters.ts';

const range = { fromM: 0.25, toM: 0.85 };
const reference = { load: bareLoad(range.fromM, range.toM), start: 'free', range } as const;
const drawOf = (lift: 'squat' | 'deadlift', totalKg: number, slope: number) => ({
  ...populationPrior(lift).mean,
  lnTotal: Math.log(totalKg),
  slope,
});

test('what can be held rises from bottom to lockout by the shape of the lifter alone, as the model writes it, whatever the strength', () => {
  // docs/model.md, "rep": ln g(1) with the dip's own ends.
  const { curvature, slope, dip } = populationShape('squat');
  const dipAt = (s: number) => dip.depth * Math.exp(-(((s - dip.at) / dip.width) ** 2));
  for (const own of [-0.2, 0, 0.3])
    for (const totalKg of [90, 260]) {
      const lnAt = heldLn(drawOf('squat', totalKg, own), 'squat', reference);
      expect(lnAt(1) - lnAt(0)).toBeCloseTo(slope + own + curvature - dipAt(1) + dipAt(0), 10);
      const light = heldLn(drawOf('squat', 60, own), 'squat', reference);
      expect(lnAt(1)).toBeCloseTo(light(1), 3);
    }
});

test('whoever pulls a maximum from the floor can hold more than it there, since it gets moving from a dead stop', () => {
  for (const slope of [-0.2, 0, 0.3])
    expect(heldLn(drawOf('deadlift', 250, slope), 'deadlift', reference)(0)).toBeGreaterThan(0);
});

import { expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { expectedMps, expectedRep } from '../rep/expectedSpeed.ts';
import { speedBeforeLog } from './speedBeforeLog.ts';
import { speedCorrectionOf } from './speedCorrectionOf.ts';

const { movedBodyShare: _, ...shape } = populationShape('squat');
const capability = { ...shape, strengthN: 3000, movedBodyKg: 80, range: { fromM: 0.9, toM: 1.5 } };
const load: Load = {
  barKg: 100,
  bands: [],
  hungBands: [],
  chains: [],
  bottomM: 0.9,
  lockoutM: 1.5,
  gravityMps2: 9.80665,
  path: [],
};
const compiled = compileLoad(load);
/** Means of the prior of the squat (docs/model.md, "strength"). */
const correction = { offsetMps: 0, perSurplusMps: 0.3, upToLn: 1.69 };
const spread = (strengthSdLn: number) =>
  speedBeforeLog('squat', compiled, capability, correction, strengthSdLn)!;
const mps = (byLn: number) =>
  expectedRep(compiled, { ...capability, strengthN: capability.strengthN * Math.exp(byLn) }, 0, correction)
    .meanSpeedMps;

it('changes with strength as two expected reps of a little weaker and a little stronger lifter do', () => {
  expect(spread(0).perLnMps).toBeCloseTo((mps(0.01) - mps(-0.01)) / 0.02, 1);
});

it('adds what is not known of strength in squares, and is never surer than the offset and the slope of most lifters', () => {
  const { perLnMps, sdMps } = spread(0.1);
  expect(sdMps ** 2 - spread(0).sdMps ** 2).toBeCloseTo((0.1 * perLnMps) ** 2, 9);
  // Offset 0.04 m/s and slope 0.35 by the table of priors (docs/model.md), at a surplus of more than 0.2: a bar far from a maximum.
  expect(spread(0).sdMps).toBeGreaterThan(Math.hypot(0.04, 0.35 * 0.2));
});

it('is nothing where no strength makes the rep in time', () => {
  const snail = { ...capability, maxSpeedMps: 1e-4 };
  expect(speedBeforeLog('squat', compiled, snail, correction, 0.03)).toBeNull();
});

it('expects a lifter as much slower or faster than the model as was measured, up to a surplus of 1.69', () => {
  // Both numbers are measured less modelled, the slope for each unit of surplus (docs/model.md, "strength").
  const learned = speedCorrectionOf({ speedOffset: -0.03, speedSlope: 0.2 });
  expect(expectedMps(0.8, 0.5, learned)).toBeCloseTo(0.8 - 0.03 + 0.2 * 0.5, 12);
  expect(expectedMps(0.8, 9, learned)).toBeCloseTo(0.8 - 0.03 + 0.2 * 1.69, 9);
});

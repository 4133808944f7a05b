import { expect, test } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { liftModelOf } from './estimateStrength.ts';
import { modelsOf } from './modelsOf.ts';
import { populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';
import { unitSlips } from './unitSlips.ts';

/** Exact: NIST SP 811. */
const KG_PER_LB = 0.45359237;
const inPounds = (kg: number) => kg / KG_PER_LB;
const range = { fromM: 0.65, toM: 1.02 };
const straight: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'paused', range };
const movedBodyKg = populationShape('bench').movedBodyShare * 80;

test('on a day by itself one bar in pounds leaves the others as they are, wherever it stands in the day', () => {
  expect(slippedOn(75, inPounds(75), 77.5, 80)).toEqual([inPounds(75)]);
});

test('a day that is all in pounds is slipped whole, and so is each day of a run', () => {
  const ramp = [60, 75, 90].map(inPounds);
  expect(slippedOn(...ramp)).toEqual(ramp);
  const withEmptyBar = [inPounds(20), ...ramp];
  expect(slippedOn(...withEmptyBar)).toEqual(ramp);
  const run = [...weeks, ...day(38, ...withEmptyBar), ...day(45, inPounds(90))];
  expect(slippedIn(run)).toEqual([...withEmptyBar, inPounds(90)]);
});

test('a plate a side more is a step and no gap: 135, 225 and 315 lb are slipped together', () => {
  const inLb = [135, 225, 315];
  expect(slippedIn([...weeksOf(142), ...day(38, ...inLb)])).toEqual(inLb);
});

test('what stands below a gap is right only where it is no harder, as written, than usual', () => {
  expect(slippedOn(85, inPounds(90))).toEqual([inPounds(90)]);
  expect(slippedOn(110, inPounds(90))).toEqual([110, inPounds(90)]);
});

test('a heavy day among light ones of every week is none, though the light ones are the pounds of it', () => {
  const mixed = [0, 1, 2, 3, 4, 5, 6].flatMap((week) => [
    ...day(7 * week, 80),
    ...[2, 4, 5].flatMap((later) => day(7 * week + later, 80 * KG_PER_LB)),
  ]);
  expect(slippedIn(mixed)).toEqual([]);
});

const isHeavy = ({ barKg }: SetEvidence) => barKg > 100;

test('a bar that somebody looked at and found right is no slip, and the others of its day are judged without it', () => {
  const heavy = day(38, 60, inPounds(80));
  expect(slippedIn([...weeks, ...heavy])).toEqual([inPounds(80)]);
  const checked = heavy.map((set) => ({ ...set, barChecked: isHeavy(set) }));
  expect(slippedIn([...weeks, ...checked])).toEqual([]);
  const tenfold = day(38, 80, 800);
  expect(slippedIn([...weeks, ...tenfold])).toEqual([800]);
  expect(slippedIn([...weeks, ...tenfold.map((set) => ({ ...set, barChecked: isHeavy(set) }))])).toEqual([]);
});

/** Singles of a lifter who presses so much once a week. */
function weeksOf(barKg: number): SetEvidence[] {
  return [0, 1, 2, 3, 4, 7, 8, 9, 10, 11].flatMap((week) => day(7 * week, barKg));
}
const weeks = weeksOf(80);

function slippedOn(...barsKg: number[]): number[] {
  return slippedIn([...weeks, ...day(38, ...barsKg)]);
}

function slippedIn(sets: SetEvidence[]): number[] {
  const model = liftModelOf('bench', straight);
  const found = unitSlips(sets, modelsOf(sets, model).models, model, populationPrior('bench'));
  return found.flatMap((slip) => slip.sets.map((i) => sets[i]!.barKg));
}

function day(on: number, ...barsKg: number[]): SetEvidence[] {
  return barsKg.map((barKg) => ({
    ...plainSingle,
    day: on,
    rigging: straight,
    barKg,
    movedBodyKg,
  }));
}

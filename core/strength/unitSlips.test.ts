import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { liftModelOf } from './estimateStrength.ts';
import { leastAboveGap } from './leastAboveGap.ts';
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

test('several reps count as the single that they stand for', () => {
  // 90 kg for five reps are worth some 100 kg once: in pounds they are far beyond who presses 100 kg.
  const fives = day(38, inPounds(90)).map((set) => ({ ...set, reps: 5, made: 5 }));
  expect(slippedIn([...weeksOf(100), ...fives])).toEqual([inPounds(90)]);
});

test('a slip is found on the first and on the newest day of a log, and none where fewer than four other weeks tell what is usual', () => {
  const later = [1, 2, 3, 4, 5].flatMap((week) => day(7 * week, 80));
  expect(slippedIn([...day(0, inPounds(80)), ...later])).toEqual([inPounds(80)]);
  expect(slippedIn([...day(0, inPounds(80)), ...later.slice(0, 4)])).toEqual([inPounds(80)]);
  expect(slippedIn([...day(0, inPounds(80)), ...later.slice(0, 3)])).toEqual([]);
  expect(slippedIn([...later, ...day(42, inPounds(80))])).toEqual([inPounds(80)]);
  expect(slipsIn(weeks)).toEqual([]);
});

test('a bar just 1.7 times as heavy is a step, a heavier one stands above a gap', () => {
  expect(leastAboveGap([100, 170])).toBe(100);
  expect(leastAboveGap([171, 100])).toBe(171);
  expect(leastAboveGap([60, 200, 100, 171])).toBe(171);
});

/** ln of how a day's hardest set fits what is usual: normal above it, Student's with four degrees of freedom below, 0.15 wide (docs/model.md). */
const lnFit = (barKg: number) => {
  const z = Math.log((barKg + movedBodyKg) / (80 + movedBodyKg)) / 0.15;
  return z > 0 ? -(z ** 2) / 2 : -2.5 * Math.log(1 + z ** 2 / 4);
};

type Written = Pick<SetEvidence, 'barKg' | 'barChecked'>;
/** Weeks of a lifter whose usual bar is 80 kg, light ones among them. */
const usualWeeks: Written[] = [80, 40, 80, 40, 80, 80, 40, 80].map((barKg) => ({ barKg, barChecked: false }));

/** Sum over all ways in which days may be slipped of how likely each is: a run begins with 1 in 300 and ends with 1 in 10. */
function chanceOf(days: readonly Written[], isOpen: (day: number, slipped: boolean) => boolean): number {
  let [asWritten, slipped] = [299 / 300, 1 / 300];
  days.forEach(({ barKg, barChecked }, at) => {
    // A bar that was looked at says nothing of the run.
    const fits = (kg: number) => (barChecked ? 1 : Math.exp(lnFit(kg)));
    asWritten *= isOpen(at, false) ? fits(barKg) : 0;
    slipped *= isOpen(at, true) ? fits(KG_PER_LB * barKg) : 0;
    if (at < days.length - 1)
      [asWritten, slipped] = [asWritten * (299 / 300) + slipped / 10, (slipped * 9) / 10 + asWritten / 300];
  });
  return asWritten + slipped;
}

test('days are slipped as the sum over all runs that may have begun and ended has it, wherever that is 95 %', () => {
  const written = fc.record({
    barKg: fc.integer({ min: 60, max: 200 }),
    barChecked: fc.constantFrom(false, false, true),
  });
  fc.assert(
    fc.property(fc.array(written, { minLength: 1, maxLength: 3 }), (found) => {
      const days = [...usualWeeks, ...found, ...usualWeeks];
      const all = chanceOf(days, () => true);
      const chances = days.map((_, at) => chanceOf(days, (day, slipped) => day !== at || slipped) / all);
      if (chances.some((chance) => Math.abs(chance - 0.95) < 0.005)) return;
      const sets = days.flatMap((one, week) => day(7 * week, one.barKg).map((set) => ({ ...set, ...one })));
      expect(slipsIn(sets).flatMap((slip) => slip.sets)).toEqual(
        [...days.keys()].filter((at) => chances[at]! > 0.95 && !days[at]!.barChecked),
      );
    }),
    { numRuns: 300 },
  );
});

test('two slipped days within a fortnight are no days by themselves', () => {
  const slip = [75, inPounds(75), 77.5];
  const other = (later: number) =>
    slippedIn([...weeks, ...day(38, ...slip), ...day(38 + later, inPounds(80))]);
  expect(other(14)).toEqual([...slip, inPounds(80)]);
  expect(other(15)).toEqual([inPounds(75), inPounds(80)]);
});

test('what was missed tells nothing of what is usual, and is slipped with the day that it was missed on', () => {
  const missed = (on: number, barKg: number) => day(on, barKg).map((set) => ({ ...set, made: 0 }));
  expect(slippedIn([...weeks, ...missed(30, 500), ...day(38, 80), ...missed(38, 170)])).toEqual([]);
  const all = [...weeks, ...day(38, inPounds(80)), ...missed(38, inPounds(90))];
  expect(slippedIn(all)).toEqual([inPounds(80), inPounds(90)]);
});

test('a set that no strength explains is no part of it', () => {
  const aboveLockout = { ...straight, load: { ...straight.load, bottomM: 1.1 } };
  const odd = day(38, 500).map((set) => ({ ...set, rigging: aboveLockout }));
  expect(slippedIn([...weeks, ...odd, ...day(38, inPounds(80))])).toEqual([inPounds(80)]);
});

/** Singles of a lifter who presses so much once a week. */
function weeksOf(barKg: number): SetEvidence[] {
  return [0, 1, 2, 3, 4, 7, 8, 9, 10, 11].flatMap((week) => day(7 * week, barKg));
}
const weeks = weeksOf(80);

function slippedOn(...barsKg: number[]): number[] {
  return slippedIn([...weeks, ...day(38, ...barsKg)]);
}

function slipsIn(sets: SetEvidence[]) {
  const model = liftModelOf('bench', straight);
  return unitSlips(sets, modelsOf(sets, model).models, model, populationPrior('bench'));
}

function slippedIn(sets: SetEvidence[]): number[] {
  return slipsIn(sets).flatMap((slip) => slip.sets.map((i) => sets[i]!.barKg));
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

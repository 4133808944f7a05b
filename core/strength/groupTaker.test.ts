import { describe, expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { liftModelOf } from './estimateStrength.ts';
import { groupTaker } from './groupTaker.ts';
import { NormalState } from './NormalState.ts';
import { type ParameterName, type Parameters, parameterNames, populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { readerOf } from './readGroup.ts';
import { readingsBeside } from './readingsBeside.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import { tabulateResponse } from './response.ts';
import type { EffortGroup } from './sessions.ts';
import { setModel } from './setModel.ts';

// What the Kalman filter takes for straight lines, beside the curves that they stand for.

const range = { fromM: 0.9, toM: 1.46 };
const straight: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
const verticalAt = [
  { zM: range.fromM, forceN: 200 },
  { zM: range.toM, forceN: 700 },
];
const banded: Rigging = {
  ...straight,
  start: 'box',
  load: { ...straight.load, hungBands: [{ verticalAt, count: 1 }] },
};
const LN_TOTAL = Math.log(200);
const lift = liftModelOf('squat', straight);
const model = setModel(
  tabulateResponse(banded, lift.shape, lift.tiring, 200, 200),
  banded.start,
  LN_TOTAL,
  80,
);
const names: ParameterName[] = parameterNames.filter((name) => name !== 'lnDaySd' && name !== 'lnWeekSd');
const around: Parameters = { ...populationPrior('squat').mean, lnTiring: 0.3, slope: 0.05, wraps: 0.07 };
const tables = readingsBeside(lift, around, names)(model);

const nothing = { mean: 0, count: 0 };
const group = {
  model,
  equipment: 'wraps',
  platform: true,
  made: 3,
  missed: false,
  count: 1,
  fastestMps: nothing,
  peakMps: nothing,
  lastMps: nothing,
  reserve: nothing,
  topShare: 0,
  carriedLn: 0.02,
} as unknown as EffortGroup;

/** Writes down what it is told, and with which slope in every quantity. */
class Written extends NormalState {
  readonly told: { value: number; sd: number; slope: number[] }[] = [];
  likelihood = 0.5;

  override takeValue(value: number, sd: number): number {
    this.told.push({ value, sd, slope: [...this.slope] });
    return value / sd;
  }

  override takeSide(side: 1 | -1, surplus: number): number {
    this.told.push({ value: surplus, sd: side, slope: [...this.slope] });
    return this.likelihood;
  }
}

/** The state at a strength of the day and of parameters that lie `off` from those that lines are drawn about. */
function stateAt(dayLn: number, off: Partial<Parameters> = {}): Written {
  const state = new Written(names.length + 2);
  state.mean.set([dayLn - 0.01, 0.01, ...names.map((name) => around[name] + (off[name] ?? 0))]);
  return state;
}

const parametersAt = (off: Partial<Parameters>): Parameters => {
  const moved = { ...around };
  for (const name of names) moved[name] += off[name] ?? 0;
  return moved;
};
/** Of the day's strength: what the set leaves of it to spare, tired as it is, in wraps and on the platform. */
const surplusAt = (dayLn: number, off: Partial<Parameters>) => {
  const { lnTiring, wraps, platform } = parametersAt(off);
  const { straightLn } = readerOf(parametersAt(off), lift)(model);
  return dayLn - straightLn - 0.02 * Math.exp(lnTiring - around.lnTiring) + wraps + platform;
};
const atLimitLn = -surplusAt(0, {});

/** By so much all is moved to look at a slope; over twice that curves are straight to 3 %. */
const STEP = 0.01;
const slopesOf = (exact: (dayLn: number, off: Partial<Parameters>) => number, dayLn: number) => {
  const perLn = (exact(dayLn + STEP, {}) - exact(dayLn - STEP, {})) / (2 * STEP);
  const perParameter = names.map(
    (name) => (exact(dayLn, { [name]: 2 * STEP }) - exact(dayLn, {})) / (2 * STEP),
  );
  return [perLn, perLn, ...perParameter];
};

const expectSlopes = (slope: number[], wanted: number[]) =>
  slope.forEach((one, i) => {
    const apart = Math.abs(one - wanted[i]!);
    expect(apart, ['strength', 'form', ...names][i]).toBeLessThan(0.005 + 0.03 * Math.abs(wanted[i]!));
  });

const off = { lnTiring: 0.02, slope: -0.02, bandError: 0.03, startError: 0.01, wraps: 0.02, platform: 0.01 };

const spare = (reps: number) => (dayLn: number, by: Partial<Parameters>) =>
  surplusAt(dayLn, by) - readerOf(parametersAt(by), lift)(model).table.neededFor(reps);

describe('what was made and missed', () => {
  it.each([
    ['made', { made: 3, missed: false }, 3, 1],
    ['missed after two', { made: 2, missed: true }, 3, -1],
  ] as const)(
    '%s: what is spare grows with strength, form and every parameter as the reps need',
    (_, told, reps, side) => {
      const dayLn = atLimitLn + 0.1;
      const state = stateAt(dayLn);
      groupTaker(state, names, around).takeOutcome({ ...group, ...told }, tables);
      const seen = state.told.at(-1)!;
      expect([seen.sd, state.told.length]).toEqual([side, told.missed ? 2 : 1]);
      expect(seen.value).toBeCloseTo(spare(reps)(dayLn, {}), 9);
      expectSlopes(seen.slope, slopesOf(spare(reps), dayLn));
    },
  );

  it('knows of no equipment and no platform in a raw set in the gym, nor of a parameter that the state does not hold', () => {
    const dayLn = atLimitLn + 0.1;
    const raw = stateAt(dayLn);
    groupTaker(raw, names, around).takeOutcome({ ...group, equipment: null, platform: false }, tables);
    const without = spare(3)(dayLn, {}) - around.wraps - around.platform;
    expect(raw.told[0]!.value).toBeCloseTo(without, 9);
    expectSlopes(
      raw.told[0]!.slope,
      slopesOf(spare(3), dayLn).map((slope, i) => (/wraps|platform/.test(names[i - 2] ?? '') ? 0 : slope)),
    );
    // A state of wraps alone, the first in it, still tells them; of the platform it knows nothing.
    const few = new Written(3);
    few.mean.set([dayLn, 0, around.wraps]);
    const beside = readingsBeside(lift, around, ['wraps'])(model);
    groupTaker(few, ['wraps'], around).takeOutcome(group, beside);
    expect(few.told[0]!.value).toBeCloseTo(without + around.wraps, 9);
    expect(few.told[0]!.slope).toEqual([1, 1, 1]);
  });

  it('is foretold along these lines for parameters that lie elsewhere', () => {
    const dayLn = atLimitLn + 0.1;
    const state = stateAt(dayLn, off);
    groupTaker(state, names, around).takeOutcome(group, tables);
    expect(state.told[0]!.value).toBeCloseTo(spare(3)(dayLn, off), 3);
  });

  it('counts each alike set, three at most, and surprises once: as much as a normal beyond half of its likelihood on either side', () => {
    // A likelihood of 0.05 stands 1.96 standard deviations off, one of 1 nowhere.
    for (const [likelihood, z] of [
      [0.05, 1.959964],
      [1, 0],
    ] as const) {
      const state = stateAt(atLimitLn);
      state.likelihood = likelihood;
      const { takeOutcome } = groupTaker(state, names, around);
      const [made, missed, ...more] = takeOutcome({ ...group, made: 2, missed: true, count: 5 }, tables);
      expect([made, missed].map((one) => one! + 0)).toEqual([expect.closeTo(z, 5), expect.closeTo(-z, 5)]);
      expect([more.length, state.told.length]).toEqual([0, 6]);
    }
    const state = stateAt(atLimitLn);
    groupTaker(state, names, around).takeOutcome({ ...group, made: 0, missed: true }, tables);
    expect(state.told.map(({ sd }) => sd)).toEqual([-1]);
  });
});

describe('how fast a group went', () => {
  const speeds = {
    fastestMps: (table: ReadTable, surplus: number) => atSurplus(table.speedMps, surplus),
    peakMps: (table: ReadTable, surplus: number) => atSurplus(table.peakMps(), surplus),
    lastMps: (table: ReadTable, surplus: number) =>
      atSurplus(table.speedMps, table.surplusAtRep(surplus, group.made)),
  };

  it.each(['fastestMps', 'peakMps', 'lastMps'] as const)(
    '%s: is foretold as the tables have it, and grows with every quantity as they do',
    (told) => {
      const exact = (dayLn: number, by: Partial<Parameters>) =>
        speeds[told](readerOf(parametersAt(by), lift)(model).table, surplusAt(dayLn, by));
      // Between two of the tabulated roots, 0.5 and 0.6, so that no line is bent.
      const dayLn = atLimitLn + 0.55 ** 2;
      const state = stateAt(dayLn);
      groupTaker(state, names, around).takeReadings({ ...group, [told]: { mean: 0.5, count: 1 } }, tables);
      expect(state.told).toHaveLength(1);
      const [{ value, slope }] = state.told as [Written['told'][number]];
      expect(value).toBeCloseTo(0.5 - exact(dayLn, {}), 9);
      expectSlopes(slope, slopesOf(exact, dayLn));
      const moved = stateAt(dayLn, off);
      groupTaker(moved, names, around).takeReadings({ ...group, [told]: { mean: 0.5, count: 1 } }, tables);
      expect(moved.told[0]!.value).toBeCloseTo(0.5 - exact(dayLn, off), 2);
    },
  );
});

describe('what was left', () => {
  const { table } = tables.now;

  it.each([0.1, 0.005])(
    'reps possible grow by one with what the next one needs, at %s to spare',
    (spareLn) => {
      const state = stateAt(atLimitLn + spareLn);
      const single = { ...group, made: 1, reserve: { mean: 0, count: 1 } };
      groupTaker(state, names, around).takeReadings(single, tables);
      const rung = Array.from({ length: 30 }, (_, n) => n + 1).find((n) => table.neededFor(n + 1) > spareLn)!;
      const perLn = 1 / (table.neededFor(rung + 1) - table.neededFor(rung));
      expect(state.told[0]!.slope[0]! / perLn).toBeCloseTo(1, 1);
    },
  );

  it('errs by 0.7 reps and a fifth of those left, of four answers by half; 0.4 are left unsaid, and where few are left answers are surer', () => {
    const dayLn = atLimitLn + 0.1;
    const possible = table.repsPossible(0.1);
    const ofOne = 0.7 + 0.2 * (possible - 3);
    for (const count of [1, 4]) {
      const state = stateAt(dayLn);
      groupTaker(state, names, around).takeReadings({ ...group, reserve: { mean: 2, count } }, tables);
      const [{ value, sd }] = state.told as [Written['told'][number]];
      expect(sd).toBeCloseTo(ofOne / Math.sqrt(count), 9);
      // A density as wide as its error, (a + b left) / root, has its slope at b / root of its width below the answer.
      expect(value).toBeCloseTo(3 + 2 + 0.4 - (0.2 * ofOne) / count - possible, 9);
    }
  });

  it('reads the top of a work-up of several reps as one and a half more in ln strength, a quarter of an answer half as surely', () => {
    const dayLn = atLimitLn + 0.1;
    const state = stateAt(dayLn);
    const [surprise] = groupTaker(state, names, around).takeReadings(
      { ...group, made: 5, topShare: 0.25 },
      tables,
    );
    const [{ value, sd, slope }] = state.told as [Written['told'][number]];
    const spareLn = 0.1 - table.neededFor(6.5);
    expect([value, sd, slope[0]]).toEqual([expect.closeTo(-spareLn, 9), expect.closeTo(0.1, 9), 1]);
    expect(surprise).toBeCloseTo(-spareLn / 0.1, 9);
  });
});

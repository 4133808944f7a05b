import { expect, test } from 'vitest';
import { fitBand } from '../band/fitBand.ts';
import { repEffortS } from '../effort/repEffort.ts';
import { tiringOf } from '../effort/Tiring.ts';
import { shapeFrom } from '../lifter/lifterCapability.ts';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { ascend, FINE } from '../rep/ascend.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import { reboundOf } from './nodeWeights.ts';
import { type Parameters, populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { readerOf } from './readGroup.ts';
import { atSurplus } from './readTable.ts';
import { tabulateResponse } from './response.ts';
import { setModel } from './setModel.ts';

const shape = populationShape('bench');
const tiring = tiringOf('bench');
const range = { fromM: 0.68, toM: 1.08 };
const straight: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
/** Bands of 10 kg at the chest and 60 kg on straight arms. */
const banded: Rigging = {
  ...straight,
  load: {
    ...straight.load,
    hungBands: [
      {
        verticalAt: [
          { zM: range.fromM, forceN: 98 },
          { zM: range.toM, forceN: 588 },
        ],
        count: 1,
      },
    ],
  },
};
const { movedBodyShare: _, ...pushed } = shape;

// A push that is not eased: the tables leave out what easing takes from a maximum against bands (docs/model.md, "rep").
const limitOf = (rigging: Rigging, barKg: number) =>
  fitStrength({ ...rigging.load, barKg }, { ...pushed, easing: 0, strengthN: 1, movedBodyKg: 0, range });

test.each(['all', 'usual'] as const)(
  'tables of %s shapes between their masses say what simulated reps say: the limit to 0.1 %, the speed to 0.012 m/s, what a rep costs to 1 %, where one stops to 0.045 of the way',
  (told) => {
    const bare = setModel(
      tabulateResponse(straight, shape, tiring, 100, 100, told),
      'free',
      Math.log(100),
      0,
    );
    const lift = { shape, tiring, reference: bare, told };
    const parameters = { ...populationPrior('bench').mean, speedSlope: 0 };
    const read = readerOf(parameters, lift);
    const response = tabulateResponse(banded, shape, tiring, 60, 160, told);
    const perKg = limitOf(straight, 100) / 100;
    for (const kg of [64, 78, 95, 128, 152]) {
      const { straightLn, table } = read(setModel(response, 'free', Math.log(kg), 0));
      const limitN = limitOf(banded, kg);
      // The straight mass that stands for this bar is the one that the same strength just makes.
      expect(Math.abs(straightLn - Math.log(limitN / perKg))).toBeLessThan(1e-3);
      const strong = { ...pushed, strengthN: limitN * Math.exp(0.25), movedBodyKg: 0, range };
      const { meanSpeedMps, peakSpeedMps } = simulateRep({ ...banded.load, barKg: kg }, strong);
      expect(Math.abs(atSurplus(table.speedMps, 0.25) - meanSpeedMps)).toBeLessThan(0.012);
      expect(Math.abs(atSurplus(table.peakMps(), 0.25) / peakSpeedMps - 1)).toBeLessThan(0.015);
      const compiled = compileLoad({ ...banded.load, barKg: kg });
      const effortS = repEffortS(compiled, strong, ascend(compiled, strong, FINE), tiring.loweringS);
      const weak = { ...strong, strengthN: limitN * Math.exp(-(0.35 ** 2)) };
      const { stoppedAt } = simulateRep({ ...banded.load, barKg: kg }, weak);
      expect(Math.abs(atSurplus(table.lossLn, 0.25) / (tiring.perSecond * effortS) - 1)).toBeLessThan(0.01);
      expect(Math.abs(table.stopAt(0.35) - stoppedAt!.s)).toBeLessThan(0.045);
    }
  },
);

// At a mass that has a table of its own, e^4.5 kg, so that the shape alone is read between.
const tabulatedKg = Math.exp(4.5);

test.each<[Rigging['start'], Partial<Parameters>]>([
  ['free', { slope: 0.3, lnMaxSpeed: 0.3, lnRebound: 0.25 }],
  ['free', { slope: -0.3, lnMaxSpeed: -0.3, lnRebound: -0.3 }],
  ['paused', { slope: -0.15, lnMaxSpeed: 0.2, heldRebound: 1.5 }],
  ['paused', { slope: 0.2, lnMaxSpeed: -0.1, heldRebound: -1 }],
])(
  'tables say of lifters of other shapes, from a %s start and with %o, what reps of theirs do',
  (start, changed) => {
    const parameters = { ...populationPrior('bench').mean, speedSlope: 0, ...changed };
    const own = (of: Rigging['start']) => ({
      ...shapeFrom(shape, of),
      maxSpeedMps: shape.maxSpeedMps * Math.exp(parameters.lnMaxSpeed),
      slope: shape.slope + parameters.slope,
      rebound: reboundOf(parameters, shape, of),
      easing: 0,
      strengthN: 1,
      movedBodyKg: 0,
      range,
    });
    const modelIn = (rigging: Rigging) =>
      setModel(
        tabulateResponse(rigging, shape, tiring, tabulatedKg, tabulatedKg),
        rigging.start,
        Math.log(tabulatedKg),
        0,
      );
    const lift = { shape, tiring, reference: modelIn(straight), told: 'all' as const };
    const { straightLn, table } = readerOf(parameters, lift)(modelIn({ ...banded, start }));
    const load = { ...banded.load, barKg: tabulatedKg };
    const limitN = fitStrength(load, own(start));
    const perKg = fitStrength({ ...straight.load, barKg: tabulatedKg }, own('free')) / tabulatedKg;
    // Where a lift sticks jumps from one place to another between two shapes: the limit has a corner there.
    expect(Math.abs(straightLn - Math.log(limitN / perKg))).toBeLessThan(0.008);
    const compiled = compileLoad(load);
    for (const root of [0.45, 0.7, 1.1]) {
      const strong = { ...own(start), easing: pushed.easing, strengthN: limitN * Math.exp(root ** 2) };
      const { meanSpeedMps } = simulateRep(load, strong);
      const effortS = repEffortS(compiled, strong, ascend(compiled, strong, FINE), tiring.loweringS);
      expect(Math.abs(atSurplus(table.speedMps, root ** 2) - meanSpeedMps)).toBeLessThan(0.02);
      expect(Math.abs(atSurplus(table.lossLn, root ** 2) / (tiring.perSecond * effortS) - 1)).toBeLessThan(
        0.03,
      );
    }
    for (const root of [0.2, 0.35, 0.5, 0.6]) {
      const weak = { ...own(start), strengthN: limitN * Math.exp(-(root ** 2)) };
      expect(Math.abs(table.stopAt(root) - simulateRep(load, weak).stoppedAt!.s)).toBeLessThan(0.05);
    }
  },
);

test('bands by their curves and bands by a scale both hang: the limit is then tabulated by mass', () => {
  const curves = fitBand({ restLengthM: 0.5, widthMm: 30, readings: [] });
  const anchor = { xM: 0, yM: 0, zM: 0 };
  const bands = [{ curves, hookup: { way: 'single' as const }, anchor, count: 2 }];
  for (const load of [
    { ...banded.load, bands },
    { ...straight.load, bands },
  ]) {
    const { lnTotals } = tabulateResponse({ ...straight, load }, shape, tiring, 60, 160, 'usual');
    expect(lnTotals[0]).toBeLessThanOrEqual(Math.log(60));
    expect(lnTotals.at(-1)).toBeGreaterThanOrEqual(Math.log(160));
  }
  expect(tabulateResponse(straight, shape, tiring, 60, 160, 'usual').lnTotals).toHaveLength(1);
});

// Chains that leave the floor on the way up: nothing of them hangs at the bottom.
const chainedLimitLn = (massPerMetreKg: number) => {
  const chains = [{ massPerMetreKg, lengthM: 2, attachBelowBarM: range.fromM, count: 2 }];
  const chained: Rigging = { ...straight, load: { ...straight.load, chains } };
  return tabulateResponse(chained, shape, tiring, 60, 60, 'usual').tables[0]!.lnLimit[0]!;
};

test('riggings that are alike at the bottom and not above it have tables of their own', () => {
  // Five times as heavy chains ask for more with the same mass.
  expect(chainedLimitLn(50)).toBeGreaterThan(chainedLimitLn(10) + 0.01);
});

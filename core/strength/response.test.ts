import { expect, test } from 'vitest';
import { repEffortS } from '../effort/repEffort.ts';
import { tiringOf } from '../effort/Tiring.ts';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { ascend, FINE } from '../rep/ascend.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import { populationPrior } from './parameters.ts';
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

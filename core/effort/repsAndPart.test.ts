import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { repsAndPart } from './repsAndPart.ts';
import { repsPossible } from './repsPossible.ts';
import { repTable } from './repTable.ts';
import { tiringOf } from './Tiring.ts';

const range = { fromM: 0.9, toM: 1.46 };
const load = { ...bareLoad(range.fromM, range.toM), barKg: 150 };
const capability = { ...populationShape('squat'), strengthN: 2500, movedBodyKg: 88, range };
const usual = tiringOf('squat');
const table = repTable(compileLoad(load), capability, usual.loweringS)!;
const tirings = fc.double({ min: 0.005, max: 0.04, noNaN: true });

test('its whole part is the number of reps that are made', () => {
  fc.assert(
    fc.property(tirings, (perSecond) => {
      const tiring = { ...usual, perSecond };
      expect(Math.floor(repsAndPart(table, tiring))).toBe(repsPossible(load, capability, tiring));
    }),
    { numRuns: 20 },
  );
});

test('who tires sooner has less of it, by however little', () => {
  fc.assert(
    fc.property(tirings, fc.double({ min: 1.001, max: 2, noNaN: true }), (perSecond, sooner) => {
      const reps = repsAndPart(table, { ...usual, perSecond });
      expect(repsAndPart(table, { ...usual, perSecond: sooner * perSecond })).toBeLessThan(reps);
    }),
  );
});

test('moves without a jump where one rep more is made', () => {
  fc.assert(
    fc.property(tirings, (perSecond) => {
      const [reps, sooner] = [perSecond, 1.0005 * perSecond].map((each) =>
        repsAndPart(table, { ...usual, perSecond: each }),
      );
      expect(reps! - sooner!).toBeLessThan(0.001 * reps!);
    }),
    { numRuns: 300 },
  );
});

test('a bar that does not go up once is no rep, and one that never tires is not counted for ever', () => {
  const weak = repTable(compileLoad(load), { ...capability, strengthN: 1800 }, usual.loweringS)!;
  expect(repsAndPart(weak, usual)).toBe(0);
  expect(repsAndPart(table, { ...usual, perSecond: 0 })).toBe(100);
});

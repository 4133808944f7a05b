import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ownRoom } from '../numeric/room.ts';
import { changeOver, FURTHER_FALL_LN, fallChance, LEAST_FALL_LN, stillShaken } from './change.ts';
import { meanLnOf, normalLattice, STEP_LN, withFall } from './lattice.ts';
import { populationPrior } from './parameters.ts';

const { mean } = populationPrior('squat');

// McMaster et al. 2013 (Sports Med 43:367): strength is kept for about three weeks without training.
test('up to three weeks without a set cost nothing', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), (weeks) => {
      expect(changeOver(weeks, mean).meanLn).toBeCloseTo(weeks * mean.weekGain, 12);
    }),
  );
});

// Bosquet et al. 2013 (Scand J Med Sci Sports 23:e140): the longer the pause, the more maximal force is lost.
test('beyond that strength falls, and is less surely known, the longer the pause', () => {
  const weeks = fc.double({ min: 6, max: 200, noNaN: true });
  fc.assert(
    fc.property(weeks, weeks, (a, b) => {
      if (Math.abs(a - b) < 0.1) return;
      const [shorter, longer] = a < b ? [a, b] : [b, a];
      expect(changeOver(longer, mean).meanLn).toBeLessThan(changeOver(shorter, mean).meanLn);
      expect(changeOver(longer, mean).sdLn).toBeGreaterThan(changeOver(shorter, mean).sdLn);
    }),
  );
});

test('a year without a set is not believed to be a gain, however well the training went before it', () => {
  expect(changeOver(52, { ...mean, weekGain: 0.006 }).meanLn).toBeLessThan(-0.05);
});

// One to four injuries in a thousand hours (Aasa et al. 2017, Br J Sports Med 51:211), five hours a week: 0.005 to 0.02 a week; two to
// four colds a year (Heikkinen & Jarvinen 2003, Lancet 361:51): 0.04 to 0.08 a week. Both from memory.
test('falls out of the blue are no rarer than injuries, and rarer than injuries and colds together', () => {
  expect(fallChance(1, 0)).toBeGreaterThan(0.02 / 1.02);
  expect(fallChance(1, 0)).toBeLessThan(0.02 + 0.04);
});

// A branching process whose members have less than one further each dies out.
test('falls that bring others with them do not go on for ever', () => {
  const further = Array.from({ length: 400 }, (_, day) => {
    const weeks = 1 / 7;
    return fallChance(weeks, stillShaken(1, day / 7)) - fallChance(weeks, 0);
  });
  expect(further.reduce((sum, one) => sum + one, 0)).toBeLessThan(0.8);
  expect(fallChance(1, 1)).toBeGreaterThan(5 * fallChance(1, 0));
});

// Closed form: the mean of a mixture moves by the share times the mean of the exponential fall.
test('a share that falls moves the mean by that share of a fall, and keeps all probability', () => {
  const start = normalLattice(5, 0.1);
  const share = 0.3;
  const fallen = withFall(start, share, ownRoom);
  const sum = fallen.weights.reduce((total, weight) => total + weight, 0);
  // Falls are followed down to 0.3, beyond which four in a hundred of them would lie.
  expect(sum).toBeGreaterThan(1 - 0.05 * share);
  expect(sum).toBeLessThanOrEqual(1);
  const movedLn = meanLnOf(fallen) - meanLnOf(start);
  const fallLn = LEAST_FALL_LN + FURTHER_FALL_LN;
  expect(Math.abs(movedLn + share * fallLn)).toBeLessThan(share * 0.2 * fallLn + STEP_LN * share);
});

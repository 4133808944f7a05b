import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ownRoom } from '../numeric/room.ts';
import { changeOver, FURTHER_FALL_LN, fallChance, LEAST_FALL_LN, stillShaken } from './change.ts';
import { drift, meanLnOf, normalLattice, STEP_LN, trim, withFall } from './lattice.ts';
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

// docs/model.md, "strength": after the three weeks 0.16 (1 - e^(-weeks / 20)) is lost, with half of that as standard deviation beside
// 0.006 sqrt(weeks); growth ends with the three weeks.
test('23 weeks without a set cost 0.16 (1 - 1 / e) of ln strength, known to half of that', () => {
  const { meanLn, sdLn } = changeOver(23, { weekGain: 0.002, lnWeekSd: Math.log(2) });
  const lostLn = 0.16 * (1 - Math.exp(-1));
  expect(meanLn).toBeCloseTo(3 * 0.002 - lostLn, 12);
  expect(sdLn).toBeCloseTo(Math.hypot(0.006 * 2 * Math.sqrt(23), lostLn / 2), 12);
});

test('a step on the grid moves the mean and widens the spread by as much as the weeks do, few or many', () => {
  for (const weeks of [0.2, 1, 4, 30]) {
    const start = normalLattice(5, 0.05);
    const later = drift(start, weeks, mean);
    const moment = (of: typeof later, power: number) => {
      const middle = meanLnOf(of) / STEP_LN - of.first;
      return (
        of.weights.reduce((sum, weight, i) => sum + weight * (i - middle) ** power, 0) * STEP_LN ** power
      );
    };
    const { meanLn, sdLn } = changeOver(weeks, mean);
    expect(moment(later, 0)).toBeCloseTo(1, 9);
    expect(meanLnOf(later) - meanLnOf(start)).toBeCloseTo(meanLn, 9);
    expect(moment(later, 2) - moment(start, 2)).toBeCloseTo(sdLn ** 2, 5);
  }
  const start = normalLattice(5, 0.05);
  expect(drift(start, 0, mean)).toBe(start);
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

// Each further step of the grid of a hundredth keeps e^(-0.01 / 0.06) of what falls.
test('what falls from one strength lies 0.04 below it and further down by an exponential law, as far as 0.3', () => {
  const { first, weights } = withFall({ first: 500, weights: Float64Array.of(1) }, 0.3, ownRoom);
  const left = Math.exp(-0.01 / 0.06);
  const at = (point: number) => weights[point - first] ?? 0;
  expect(at(500)).toBeCloseTo(0.7, 12);
  for (const steps of [1, 2, 3]) expect(at(500 - steps)).toBe(0);
  for (const steps of [4, 5, 12, 30])
    expect(at(500 - steps)).toBeCloseTo(0.3 * (1 - left) * left ** (steps - 4), 12);
  expect([at(469), first + weights.length]).toEqual([0, 501]);
});

test('ends of a distribution below a ten-thousandth of its peak are let go, and what is left stands where it stood', () => {
  const trimmed = ({ first, weights }: typeof lattice) => {
    const { first: from, weights: kept } = trim({ first, weights: weights.slice() }, 0.5);
    return [from, [...kept]];
  };
  const lattice = { first: 10, weights: Float64Array.of(1e-6, 2.9e-5, 0.2, 0, 0.3, 3.1e-5, 2.9e-5, 0) };
  expect(trimmed(lattice)).toEqual([12, [0.4, 0, 0.6, 6.2e-5].map((share) => expect.closeTo(share, 12))]);
  expect(trimmed({ first: 3, weights: Float64Array.of(0, 0.5) })).toEqual([4, [1]]);
  expect(trimmed({ first: 3, weights: Float64Array.of(0.5, 0) })).toEqual([3, [1]]);
});

import { expect, test } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { normalCdf } from '../numeric/normal.ts';
import { beliefOfMixture } from './belief.ts';
import { liftModelOf } from './estimateStrength.ts';
import { gridFilter } from './gridFilter.ts';
import { drift, meanLnOf, normalLattice, STEP_LN } from './lattice.ts';
import { populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { sessionsOf } from './sessions.ts';
import { plainSingle } from './tests/plainSingle.ts';

const range = { fromM: 0.9, toM: 1.46 };
const reference: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
/** Its straight lift is one of 100 kg. */
const lift = liftModelOf('squat', reference);
const single: SetEvidence = {
  ...plainSingle,
  day: 0,
  rigging: reference,
  barKg: 100,
  movedBodyKg: 0,
};

// docs/model.md, "strength": 0.018 from day to day, six days in a hundred 1.5 of them lower and twice as wide; luck 0.012; two
// entries in a hundred off by 0.12; three in a thousand say nothing.
const goes = (u: number, sd: number) =>
  0.94 * normalCdf(u / Math.hypot(0.018, sd)) + 0.06 * normalCdf((u - 0.027) / Math.hypot(0.036, sd));

const chanceMade = (u: number) => 0.0015 + 0.977 * goes(u, 0.012) + 0.02 * goes(u, 0.12);

test('a single is made as often as the day’s form, its own luck and slips of the pen allow', () => {
  const { mean } = populationPrior('squat');
  const filtered = (made: 0 | 1, meanLn: number) => {
    const sessions = sessionsOf([{ ...single, made }], [lift.reference]);
    // Average strength is all but known.
    return Math.exp(gridFilter(sessions, lift, { meanLn, sdLn: 1e-3 }, mean, false).lnEvidence);
  };
  for (const meanLn of [4.45, 4.55, 4.6, 4.65, 4.7]) {
    const made = chanceMade(meanLn - Math.log(100));
    expect(Math.abs(filtered(1, meanLn) / made - 1)).toBeLessThan(0.01);
    expect(Math.abs(filtered(0, meanLn) / (1 - made) - 1)).toBeLessThan(0.03);
  }
});

test('of strength that is little known a single says what it says of each strength, weighed by how likely that was', () => {
  const { mean } = populationPrior('squat');
  const prior = { meanLn: 4.58, sdLn: 0.08 };
  for (const made of [0, 1] as const) {
    const sessions = sessionsOf([{ ...single, made }], [lift.reference]);
    const { lnEvidence, newest } = gridFilter(sessions, lift, prior, mean, false);
    let [sum, first, second] = [0, 0, 0];
    for (let z = -5; z <= 5; z += 0.01) {
      const ln = prior.meanLn + z * prior.sdLn;
      const goes = chanceMade(ln - Math.log(100));
      const weight = Math.exp(-(z ** 2) / 2) * (made === 1 ? goes : 1 - goes);
      sum += weight;
      first += weight * ln;
      second += weight * ln ** 2;
    }
    expect(Math.exp(lnEvidence) / ((sum * 0.01) / Math.sqrt(2 * Math.PI))).toBeCloseTo(1, 2);
    expect(Math.abs(meanLnOf(newest.after) - first / sum)).toBeLessThan(0.001);
    const middle = meanLnOf(newest.after) / STEP_LN - newest.after.first;
    const square = newest.after.weights.reduce((total, weight, i) => total + weight * (i - middle) ** 2, 0);
    expect((STEP_LN * Math.sqrt(square)) / Math.sqrt(second / sum - (first / sum) ** 2)).toBeCloseTo(1, 1);
  }
});

test('a fall is thought of before the newest sessions, and before an older one only where it speaks for one', () => {
  const { mean } = populationPrior('squat');
  const known = { meanLn: Math.log(105), sdLn: 0.02 };
  const fallShares = (made: readonly (0 | 1)[]) => {
    const sets = made.map((goes, week) => ({ ...single, day: 7 * week, made: goes }));
    const sessions = sessionsOf(
      sets,
      sets.map(() => lift.reference),
    );
    return gridFilter(sessions, lift, known, mean, true).fallShares;
  };
  // Five falls in a hundred weeks (docs/model.md, "strength"); the newest fortnight is the last two of weekly sessions.
  const aWeek = 1 - Math.exp(-0.05);
  const usual = fallShares([1, 1, 1, 1, 1]);
  expect(usual.slice(0, 3)).toEqual([0, 0, 0]);
  expect(usual[4]).toBeCloseTo(aWeek, 2);
  expect(usual[4]).toBeGreaterThanOrEqual(aWeek);
  expect(fallShares([1, 1, 0, 1, 1])[2]).toBeGreaterThanOrEqual(aWeek);
});

test('strength gains by the week and wanders by the root of the weeks', () => {
  const { mean } = populationPrior('squat');
  // Four times the usual 0.006 a week (docs/model.md, "strength"), and a gain of 2 %.
  const fast = { ...mean, weekGain: 0.02, lnWeekSd: Math.log(4) };
  // Longer without a set is no training any more: change.test.ts.
  for (const weeks of [0.5, 1, 3]) {
    const strength = drift(normalLattice(5, 1e-3), weeks, fast);
    const { median, low80, high80 } = beliefOfMixture([{ weight: 1, strength }], (lnTotal) => lnTotal);
    expect(Math.abs(median - 5 - 0.02 * weeks)).toBeLessThan(0.004);
    // 80 % of a normal lie within 1.2816 standard deviations.
    const sd = (high80 - low80) / (2 * 1.2816);
    expect(Math.abs(sd / (4 * 0.006 * Math.sqrt(weeks)) - 1)).toBeLessThan(0.1);
  }
});

import { describe, expect, it } from 'vitest';
import { normalCdf } from '../numeric/normal.ts';
import { gridFilter } from './gridFilter.ts';
import { kalmanPass } from './kalmanPass.ts';
import { meanLnOf, STEP_LN } from './lattice.ts';
import { type ParameterName, type Parameters, populationPrior } from './parameters.ts';
import { readingsBeside } from './readingsBeside.ts';
import type { EffortGroup, Session } from './sessions.ts';
import { alikeSpeed, alikeGroup as group } from './tests/alikeGroup.ts';
import { lift } from './tests/alikeShapes.ts';

// The Kalman filter beside the exact one, which knows of no straight lines and no normal distributions.

const prior = { ...populationPrior('squat'), mean: { ...populationPrior('squat').mean, speedSlope: 0 } };
const start = { meanLn: Math.log(190), sdLn: 0.1 };
const missed = { made: 0, missed: true };
const timed = (kg: number, maxKg: number) => group(kg, { fastestMps: alikeSpeed(kg, maxKg) });
const on = (day: number, ...groups: EffortGroup[]): Session => ({ day, groups });

function passed(sessions: Session[], changed: Partial<Parameters> = {}, names: ParameterName[] = []) {
  const around = { ...prior.mean, ...changed };
  const read = readingsBeside(lift, around, names);
  return kalmanPass(sessions, lift, prior, start, names, { around, read, dayLn: null });
}

function exact(sessions: Session[], changed: Partial<Parameters> = {}) {
  const { newest, lnEvidence, fallShares } = gridFilter(
    sessions,
    lift,
    start,
    { ...prior.mean, ...changed },
    true,
  );
  const { first, weights } = newest.after;
  const mean = meanLnOf(newest.after);
  const square = weights.reduce((sum, weight, i) => sum + weight * ((first + i) * STEP_LN - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(square), lnEvidence, fallShares };
}

const weekly = (count: number, of: (week: number) => EffortGroup[]) =>
  Array.from({ length: count }, (_, week) => on(7 * week, ...of(week)));
const steady = weekly(8, () => [timed(150, 200), timed(170, 200)]);

const logs: [string, Session[], Partial<Parameters>?][] = [
  ['singles made and missed', weekly(4, () => [group(180), group(195), group(205, missed)])],
  ['speeds of steady weeks', steady],
  ['fives with reps left', weekly(5, () => [group(160, { made: 5, reserve: { mean: 2, count: 1 } })])],
  ['ten weeks without a set', [...steady.slice(0, 4), on(7 * 13, timed(150, 185))]],
  ['one bad day', [...steady.slice(0, 6), on(42, timed(150, 176), timed(160, 176))]],
  [
    'weeks after a fall',
    [...steady.slice(0, 5), ...[35, 38, 42, 45, 49].map((day) => on(day, timed(150, 178)))],
  ],
  [
    'days that differ twice as much',
    weekly(8, (week) => [timed(150, week % 2 === 0 ? 192 : 208)]),
    { lnDaySd: Math.LN2 },
  ],
];

describe('what the Kalman filter believes of strength', () => {
  it.each(logs)(
    'lies where the exact filter finds it and is about as sure, after %s',
    (_, sessions, changed) => {
      const { mean, covariance } = passed(sessions, changed);
      const found = exact(sessions, changed);
      expect(Math.abs(mean[0]! - found.mean) / found.sd).toBeLessThan(0.45);
      expect(Math.abs(Math.log(Math.sqrt(covariance[0]!) / found.sd))).toBeLessThan(Math.log(1.25));
    },
  );

  it.each([
    ['lnDaySd', 0.5],
    ['lnDaySd', -0.5],
    ['lnWeekSd', 0.7],
    ['lnWeekSd', -0.7],
  ] as const)('finds a log as much likelier by another %s (%s) as the exact filter does', (name, value) => {
    for (const [, sessions] of logs.slice(0, 4)) {
      const change = passed(sessions, { [name]: value }).lnEvidence - passed(sessions).lnEvidence;
      const wanted = exact(sessions, { [name]: value }).lnEvidence - exact(sessions).lnEvidence;
      expect(Math.abs(change - wanted)).toBeLessThan(0.05 + 0.25 * Math.abs(wanted));
    }
  });

  it('weighs a day far below what was expected as a bad one or as a fall as the exact filter does, and the next day with it', () => {
    const usual = steady.slice(0, 6);
    const before = { passed: passed(usual), exact: exact(usual) };
    for (const maxKg of [180, 176, 172, 168])
      for (const next of [[], [on(49, timed(150, 180))]]) {
        const log = [...usual, on(42, timed(150, maxKg), timed(155, maxKg)), ...next];
        const { mean, covariance, lnEvidence } = passed(log);
        const found = exact(log);
        const movedLn = mean[0]! - before.passed.mean[0]!;
        expect(Math.abs(movedLn - (found.mean - before.exact.mean))).toBeLessThan(0.01);
        expect(Math.abs(Math.log(Math.sqrt(covariance[0]!) / found.sd))).toBeLessThan(Math.log(1.2));
        const likelier = lnEvidence - before.passed.lnEvidence;
        expect(Math.abs(likelier - (found.lnEvidence - before.exact.lnEvidence))).toBeLessThan(0.5);
      }
  });

  it('is rested when the first set of a day begins, and tired by what came before in it', () => {
    const sessions = [
      on(0, group(150, { made: 5, restS: [60] }), group(150, { restS: [60] })),
      on(1, group(150)),
    ];
    passed(sessions);
    const carried = sessions.map(({ groups }) => groups.map(({ carriedLn }) => carriedLn));
    expect([carried[0]![0], carried[1]![0]]).toEqual([0, 0]);
    expect(carried[0]![1]).toBeGreaterThan(0.005);
  });

  it('widens with the weeks, and hangs together with the gain of three of them, where no set tells anything', () => {
    // Without a set strength grows for three weeks; its change has 0.006 a root of a week (docs/model.md, "strength").
    const names: ParameterName[] = ['platform', 'weekGain'];
    const { mean, covariance } = passed([on(0), on(14)], {}, names);
    const { platform, weekGain } = prior.sd;
    const later = passed([on(0), on(14), on(28)], {}, names);
    expect(later.covariance[0]).toBeCloseTo(0.1 ** 2 + (4 * weekGain) ** 2 + 4 * 0.006 ** 2, 12);
    expect(mean[0]).toBeCloseTo(start.meanLn + 2 * prior.mean.weekGain, 12);
    expect(covariance[0]).toBeCloseTo(0.1 ** 2 + (2 * weekGain) ** 2 + 2 * 0.006 ** 2, 12);
    expect([covariance[3], covariance[12]]).toEqual([1, 1].map(() => expect.closeTo(2 * weekGain ** 2, 12)));
    expect([covariance[10], covariance[15]]).toEqual(
      [platform, weekGain].map((sd) => expect.closeTo(sd ** 2, 12)),
    );
  });

  it('learns a weekly gain, and strength with it, as the exact filter does over all gains', () => {
    const wide = { mean: prior.mean, sd: { ...prior.sd, weekGain: 0.006 } };
    const gains = weekly(10, (week) => [timed(150, 180 * 1.01 ** week)]);
    const read = readingsBeside(lift, prior.mean, ['weekGain']);
    const { mean, covariance } = kalmanPass(gains, lift, wide, start, ['weekGain'], {
      around: prior.mean,
      read,
      dayLn: null,
    });
    let [sum, ofGain, ofStrength, square, shared] = [0, 0, 0, 0, 0];
    const found = Array.from({ length: 41 }, (_, i) => prior.mean.weekGain + (i - 20) * 0.001).map(
      (weekGain) => {
        const at = exact(gains, { weekGain });
        return { weekGain, ...at, ln: at.lnEvidence - 0.5 * ((weekGain - prior.mean.weekGain) / 0.006) ** 2 };
      },
    );
    const most = Math.max(...found.map(({ ln }) => ln));
    for (const { weekGain, mean: strength, ln } of found) {
      const weight = Math.exp(ln - most);
      sum += weight;
      ofGain += weight * weekGain;
      ofStrength += weight * strength;
      square += weight * weekGain ** 2;
      shared += weight * weekGain * strength;
    }
    const [gain, strength] = [ofGain / sum, ofStrength / sum];
    const sd = Math.sqrt(square / sum - gain ** 2);
    expect(gain).toBeGreaterThan(0.006);
    expect(Math.abs(mean[2]! - gain) / sd).toBeLessThan(0.35);
    expect(covariance[8]! / sd ** 2).toBeCloseTo(1, 0);
    expect(Math.abs(mean[0]! - strength)).toBeLessThan(0.01);
    // Who gained more is stronger now: what hangs together does so as much, and either way round.
    expect(covariance[2]! / (shared / sum - gain * strength)).toBeCloseTo(1, 0);
    expect(covariance[6]).toBeCloseTo(covariance[2]!, 12);
  });

  it('finds a miss, and one after the other, as likely as three readings of the day have it by their chances, to every digit', () => {
    // Figures of docs/model.md, "strength": luck of a set 0.012, two in a hundred 0.12, three in a thousand tell nothing; the day's form
    // 0.018, six in a hundred 1.5 of them lower and twice as wide; falls 0.05 a week, 0.25 more after one, of 0.04 and 0.06 in the mean.
    for (const [days, share] of [
      [[0, 7, 14, 21], 0.62],
      [[0, 7, 9, 11, 13], 0.8],
      [[0, 14, 70], 1],
    ] as const) {
      const log = [on(0)];
      let shaken = 0;
      for (let at = 1; at < days.length; at++) {
        const before = passed(log);
        const kg = share * Math.exp(before.mean[0]!);
        log.push(on(days[at]!, group(kg, missed)));
        const weeks = (days[at]! - days[at - 1]!) / 7;
        const lostLn = 0.16 * (1 - Math.exp(-Math.max(0, weeks - 3) / 20));
        const surplus = before.mean[0]! - lostLn - Math.log(kg);
        const variance = before.covariance[0]! + weeks * 0.006 ** 2 + (0.5 * lostLn) ** 2;
        shaken *= Math.exp(-weeks / 2);
        const chance = 1 - Math.exp(-Math.min(weeks, 3) * (0.05 + 0.25 * shaken));
        const usual = missChance(surplus, variance + 0.018 ** 2 * (1 + 0.06 * (2 ** 2 - 1)));
        const bad = missChance(surplus - 1.5 * 0.018, variance + 0.036 ** 2);
        const fallen = missChance(surplus - 0.1, variance + 0.06 ** 2 + 0.018 ** 2);
        const mixed = (1 - chance) * (0.94 * usual + 0.06 * bad) + chance * fallen;
        // As surprising as two standard deviations is what has a chance of 0.0455 on both sides.
        const likelihood = usual < 0.0455 ? mixed : usual;
        const found = passed(log).lnEvidence - before.lnEvidence;
        expect(found).toBeCloseTo(Math.log(likelihood), 9);
        const fell = (chance * fallen) / mixed;
        if (usual < 0.0455) shaken = fell + (1 - fell) * shaken;
      }
    }
  });

  it('knows of no fall before the first session', () => {
    // The lone miss of a bar far below: a usual day's chance, the day's form and two sorts of luck as above.
    const variance = 0.01 + 0.018 ** 2 * 1.18;
    const surplus = Math.log(190 / 140);
    const likelihood = [0.977, 0.02].reduce(
      (sum, share, i) =>
        sum + share * normalCdf(-surplus / Math.hypot([0.012, 0.12][i]!, Math.sqrt(variance))),
      0.0015,
    );
    expect(passed([on(0, group(140, missed))]).lnEvidence).toBeCloseTo(Math.log(likelihood), 9);
  });

  it('shares what a day tells between strength and the form of the day as far as either was unknown, and says which set moved it', () => {
    const { mean, dayLn, surprises } = passed([on(0, group(195), timed(150, 190))]);
    const movedLn = mean[0]! - start.meanLn;
    expect(movedLn).toBeGreaterThan(0);
    expect(dayLn[0]).toBeCloseTo(start.meanLn + movedLn * (1 + (0.018 ** 2 * 1.18) / 0.1 ** 2), 9);
    expect(surprises.reduce((sum, one) => sum + one.movedLn, 0)).toBeCloseTo(movedLn, 12);
    // A speed that is all but what was expected surprises nobody.
    expect(Math.abs(passed([on(0, timed(150, 190))]).surprises[0]!.surprise)).toBeLessThan(0.1);
  });

  it('tires by what the strength of the day leaves to spare, told at the population’s tiring', () => {
    for (const [lnTiring, maxKg, dayLn] of [
      [0, 190, null],
      [0.5, 190, null],
      [0.5, 200, [Math.log(200)]],
    ] as const) {
      const sessions = [on(0, group(150, { made: 5, restS: [60] }), group(150, { restS: [60] }))];
      const around = { ...prior.mean, lnTiring };
      const read = readingsBeside(lift, around, []);
      kalmanPass(sessions, lift, prior, start, [], { around, read, dayLn });
      // A rep costs 0.0128 a second of its 2 s and the root of what is spare.
      let [left, lost] = [Math.log(maxKg / 150), 0];
      for (let rep = 0; rep < 5; rep++) {
        const cost = Math.exp(lnTiring) * 0.0128 * (2 + Math.sqrt(left));
        lost += cost;
        left -= cost;
      }
      const rested = 0.85 * 0.5 ** (60 / 22) + 0.15 * 0.5 ** (60 / 170);
      // Between the tenths of the root for which they are tabulated, costs run straight: here they are straight.
      expect(sessions[0]!.groups[1]!.carriedLn * Math.exp(lnTiring)).toBeCloseTo(lost * rested, 6);
    }
  });
});

/** Luck of a set: 0.012, two in a hundred 0.12, three in a thousand tell nothing. */
function missChance(surplus: number, variance: number): number {
  return (
    0.977 * normalCdf(-surplus / Math.hypot(0.012, Math.sqrt(variance))) +
    0.02 * normalCdf(-surplus / Math.hypot(0.12, Math.sqrt(variance))) +
    0.003 / 2
  );
}

import { describe, expect, it } from 'vitest';
import type { Lift } from '#contract/records/lift.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { gainNoise } from '#core/evidence/gainNoise.ts';
import { liftNoise } from '#core/evidence/liftNoise.ts';
import { likelyLifts } from '#core/evidence/likelyLifts.ts';
import { shareRows } from './blockRows.ts';
import { type GymGain, gymGains } from './gymGains.ts';
import type { HardLift } from './HardLift.ts';
import { hardLifts } from './hardLifts.ts';
import type { MeetStep } from './meetLifts.ts';

// The limits of docs/model.md, "evidence", each from both sides. Judgement all of them, where no source is named.

const start = Date.parse('2026-01-01');
const day = (days: number) => new Date(start + days * 86_400_000).toISOString().slice(0, 10);
const nothingHung = () => ({ bandKg: 0, chainKg: 0 });
const lift = (days: number, barKg: number, changed: Partial<HardLift> = {}): HardLift => ({
  lifterId: 'a',
  lift: 'squat',
  equipment: 'raw',
  setup: loggedSquat('', day(0), barKg).setup,
  doneOn: day(days),
  key: 'k',
  reps: 1,
  barKg,
  ...changed,
});
const step = (before: number, after: number, onDay = 200): MeetStep => {
  const meet = { lifterId: 'a', lift: 'squat' as const, equipment: 'raw' as const };
  return {
    before: { ...meet, doneOn: day(100), barKg: before },
    after: { ...meet, doneOn: day(onDay), barKg: after },
  };
};

const isKept = (barKg: number, days: number) =>
  likelyLifts([lift(0, 150), lift(1, 150), lift(2, 150), lift(days, barKg)]).length === 4;

const topCounts = (reps: number, alike = 1) =>
  hardLifts(
    [...Array.from({ length: alike }, () => 120), 150].map((kg, i) =>
      loggedSquat(`${i}`, day(0), kg, { order: i, reps, made: reps }),
    ),
    [],
    nothingHung,
  ).length === 1;

const isHard = (change: Parameters<typeof loggedSquat>[3]) =>
  hardLifts([loggedSquat('a', day(0), 150, change)], [], nothingHung).length === 1;

describe('a hard lift', () => {
  it('is of up to five reps, and leaves two at most', () => {
    expect(isHard({ reps: 5, made: 5, repsInReserve: 2 })).toBe(true);
    expect(isHard({ reps: 6, made: 6, repsInReserve: 2 })).toBe(false);
    expect(isHard({ reps: 5, made: 5, repsInReserve: 3 })).toBe(false);
  });

  it.each<[Lift, number]>([
    // Powerlifters at their maximum, 0.23, 0.10 and 0.14 m/s (Helms et al. 2017, J Strength Cond Res 31:292), and 0.12 more.
    ['squat', 0.23 + 0.12],
    ['bench', 0.1 + 0.12],
    ['deadlift', 0.14 + 0.12],
  ])('ends no faster than that: %s at %d m/s', (name, mps) => {
    expect(isHard({ lift: name, meanSpeedsMps: [mps - 0.005] })).toBe(true);
    expect(isHard({ lift: name, meanSpeedsMps: [mps + 0.005] })).toBe(false);
  });

  it('is, where nobody says how hard it was, the top of a rise of up to three reps with no bar in more than two sets', () => {
    expect(topCounts(3)).toBe(true);
    expect(topCounts(4)).toBe(false);
    expect(topCounts(2, 2)).toBe(true);
    expect(topCounts(2, 3)).toBe(false);
  });

  it('lies within 12 % of the middle of those with its setup 60 days around it', () => {
    expect(isKept(150 * Math.exp(0.115), 30)).toBe(true);
    expect(isKept(150 * Math.exp(0.125), 30)).toBe(false);
    expect(isKept(150 * Math.exp(-0.125), 30)).toBe(false);
    expect(isKept(200, 60)).toBe(false);
    expect(isKept(200, 63)).toBe(true);
  });
});

const gainsOf = (from: number[], to: number[], gainKg = 10) =>
  gymGains(
    [step(200, 205)],
    [...from.map((days) => lift(100 - days, 150)), ...to.map((days) => lift(200 - days, 150 + gainKg))],
  );

describe('a gain from meet to meet', () => {
  it('is what the best of two hard days or more in the 70 days before each gained, over the lift at the earlier meet', () => {
    const [gain] = gainsOf([70, 20], [70, 20]);
    expect([gain!.gymGain, gain!.platformGain]).toEqual([10 / 200, 5 / 200]);
    expect(gainsOf([71, 20], [70, 20])).toEqual([]);
    expect(gainsOf([70, 20], [71, 20])).toEqual([]);
    expect(gainsOf([20], [70, 20])).toEqual([]);
  });

  it('of more than a quarter of the platform lift is left out', () => {
    expect(gainsOf([30, 20], [30, 20], 50)).toHaveLength(1);
    expect(gainsOf([30, 20], [30, 20], 51)).toEqual([]);
    expect(gainsOf([30, 20], [30, 20], -51)).toEqual([]);
  });
});

const gainOf = (fromDays: number, toDays: number) =>
  ({ from: lift(0, 100), to: lift(0, 120), fromDays, toDays, step: step(200, 205) }) as GymGain;

/** Pairs of repeats so many days apart that differ by this in ln. */
const repeats = (count: number, differLn: number, apart = 7, changed: Partial<HardLift> = {}) =>
  Array.from({ length: count }, (_, i) => [
    lift(0, 100, { key: `${i}` }),
    lift(apart, 100 * Math.exp(differLn), { key: `${i}`, ...changed }),
  ]).flat();

describe('the noise of a hard lift', () => {
  it('is 2 % until twenty repeats within two weeks for as many reps tell', () => {
    expect(liftNoise(repeats(19, 0.01))).toEqual({ share: 0.02, known: 'assumed', pairs: 19 });
    expect(liftNoise(repeats(20, 0.01, 14)).known).toBe('measured');
    expect(liftNoise(repeats(20, 0.01, 15)).pairs).toBe(0);
    expect(liftNoise(repeats(20, 0.01, 7, { reps: 2 })).pairs).toBe(0);
  });

  it('is then what the median difference of two such lifts says, to 4.2 % at most', () => {
    // Half of a normal's values lie within 0.6745 standard deviations, and two lifts differ by √2 of one's.
    expect(liftNoise(repeats(20, 0.6745 * Math.SQRT2 * 0.03)).share).toBeCloseTo(0.03, 9);
    expect(liftNoise(repeats(20, 0.2)).share).toBe(0.042);
  });

  it('of a gain is that of both its bests over the platform lift, each steadier the more days it is the best of', () => {
    // Harter 1961, Biometrika 48:151: the best of one day varies as one does, of two 0.6817, of ten 0.3443.
    const noise = { share: 0.03, known: 'measured' as const, pairs: 20 };
    const expected = 0.03 * Math.sqrt((0.6817 * 100 ** 2 + 120 ** 2) / 200 ** 2);
    expect(gainNoise([gainOf(2, 1)], noise)).toBeCloseTo(expected, 9);
    const best = 0.03 * Math.sqrt((0.3443 * (100 ** 2 + 120 ** 2)) / 200 ** 2);
    expect(gainNoise([gainOf(10, 25)], noise)).toBeCloseTo(best, 9);
  });
});

// Singles with 20 kg of bands and 5 of chain, doubles with 60: (5 x 20 + 10 x 60) / (5 x 125 + 10 x 165).
const hungPull = ({ id }: { id?: string }) => ({ bandKg: Number(id) % 2 === 0 ? 20 : 60, chainKg: 5 });

const blockOf = (count: number) =>
  Array.from({ length: count }, (_, i) =>
    loggedSquat(`${i}`, day(110 + i), 100, { lifterId: 'a', reps: 1 + (i % 2), made: 1 + (i % 2) }),
  );

describe('the band share of a block', () => {
  it('is pull over load, rep by rep, of ten sets at least', async () => {
    const [row] = await shareRows([step(200, 205)], blockOf(10), hungPull as Parameters<typeof shareRows>[2]);
    expect(row!.bandShare).toBeCloseTo(700 / 2275, 12);
    expect(
      await shareRows([step(200, 205)], blockOf(9), hungPull as Parameters<typeof shareRows>[2]),
    ).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { normalCdf, normalDensity } from '../numeric/normal.ts';
import { populationPrior } from './parameters.ts';
import type { ReadModel } from './readGroup.ts';
import { ReadTable } from './readTable.ts';
import { sessionLikelihood } from './sessionLikelihood.ts';
import type { EffortGroup } from './sessions.ts';

// What one set says, worked out anew from the figures of docs/model.md, "strength". `u` is what is spare of ln strength.

/** Each rep costs a fifth of ln strength, a rep runs at 0.2 m/s and the root of what is spare, a miss at 0.1 and the root of what lacked. */
const LOSS_LN = 0.2;
const PEAK_RATIO = 1.5;
const speedMps = (u: number) => 0.2 + Math.sqrt(u);
const stopAt = (lacked: number) => 0.1 + Math.sqrt(lacked);
const roots = Array.from({ length: 14 }, (_, j) => j / 10);
const table = new ReadTable(
  Float64Array.from(roots, (root) => 0.2 + root),
  Float64Array.from(roots, () => LOSS_LN),
  () => 1,
  Float64Array.from([0.05, 0.17, 0.29, 0.41, 0.53, 0.65], (root) => 0.1 + root),
  Float64Array.from(roots, () => PEAK_RATIO),
);
const possible = (u: number) => 0.5 + u / LOSS_LN;

const nothing = { mean: 0, count: 0 };
const single = {
  equipment: null,
  platform: false,
  made: 1,
  missed: false,
  count: 1,
  fastestMps: nothing,
  peakMps: nothing,
  lastMps: nothing,
  reserve: nothing,
  stopped: nothing,
  topShare: 0,
  stopShare: 1,
  carriedLn: 0,
};
const parameters = populationPrior('squat').mean;

const read = (): ReadModel => ({ straightLn: 5, table });

/** ln likelihood of one group where so much is spare, for a lifter whose set stands for ln 5. */
function lnAt(u: number, group: Partial<EffortGroup>, told = parameters): number {
  const session = { day: 0, groups: [{ ...single, ...group } as EffortGroup] };
  const { values, lnScale } = sessionLikelihood(session, read, told, 500 + Math.round(u * 100), 1);
  return Math.log(values[0]!) + lnScale;
}

/** By how much likelier the log makes one surplus than another. */
const ratio = (group: Partial<EffortGroup>, u: number, to: number) => lnAt(u, group) - lnAt(to, group);
/** Student's t with 4 degrees of freedom, but for its constant. */
const student = (z: number) => (1 + z ** 2 / 4) ** -2.5;
/** Luck of a set 0.012; two entries in a hundred are off by 0.12, three in a thousand say nothing. */
const enough = (u: number) => 0.977 * normalCdf(u / 0.012) + 0.02 * normalCdf(u / 0.12);
const made = (u: number) => 0.0015 + enough(u);
const places = [-0.6, -0.3, -0.1, -0.02, 0, 0.01, 0.05, 0.2, 0.6];

describe('a set that was made or missed', () => {
  it('is as likely as its own luck, a slip of the pen and an entry that says nothing make it', () => {
    for (const u of places) {
      expect(lnAt(u, {})).toBeCloseTo(Math.log(made(u)), 4);
      // The third of three reps wants two reps' worth more.
      expect(lnAt(u, { made: 3 })).toBeCloseTo(Math.log(made(u - 2 * LOSS_LN)), 4);
      const missed = 0.0015 + enough(u - LOSS_LN) - enough(u - 2 * LOSS_LN);
      expect(lnAt(u, { made: 2, missed: true })).toBeCloseTo(Math.log(missed), 4);
    }
  });

  it('counts as often as it was done, and no more than three times', () => {
    for (const [count, times] of [
      [2, 2],
      [3, 3],
      [4, 3],
      [9, 3],
    ] as const)
      expect(lnAt(-0.02, { count })).toBeCloseTo(times * Math.log(made(-0.02)), 4);
  });

  it('is easier in gear and on the platform and harder after other sets, the more so for who tires sooner', () => {
    const told = { ...parameters, singlePly: 0.1, platform: 0.03, lnTiring: Math.LN2 };
    const fastestMps = { mean: 0.5, count: 1 };
    const plain = (u: number) => lnAt(u, { fastestMps });
    expect(lnAt(0.2, { fastestMps, equipment: 'singlePly' }, told)).toBeCloseTo(plain(0.3), 9);
    expect(lnAt(0.2, { fastestMps, platform: true }, told)).toBeCloseTo(plain(0.23), 9);
    expect(lnAt(0.2, { fastestMps, carriedLn: 0.05 }, told)).toBeCloseTo(plain(0.1), 9);
  });
});

const sdMps = (count: number) => Math.sqrt(0.03 ** 2 / count + 0.025 ** 2);

describe('bar speed', () => {
  /** Surpluses at which the table is exact. */
  const [here, there] = [0.64, 1.21];

  it('errs by 0.03 m/s a set and 0.025 shared by alike ones, with the tails of Student’s t', () => {
    for (const count of [1, 4]) {
      const off = (speedMps(there) - speedMps(here)) / sdMps(count);
      const group = { fastestMps: { mean: speedMps(here), count } };
      expect(ratio(group, there, here)).toBeCloseTo(Math.log(student(off)), 6);
      expect(lnAt(here, group) - lnAt(here, {})).toBeCloseTo(-Math.log(sdMps(count)), 6);
    }
  });

  it('is read with twice the error at its peak, and with one and a half times in a last rep', () => {
    const sd = sdMps(1);
    const peak = { peakMps: { mean: PEAK_RATIO * speedMps(here), count: 1 } };
    const peakOff = (PEAK_RATIO * (speedMps(there) - speedMps(here))) / (2 * sd);
    expect(ratio(peak, there, here)).toBeCloseTo(Math.log(student(peakOff)), 6);
    // Two reps before it left two fifths less.
    const last = (u: number) => speedMps(u - 2 * LOSS_LN);
    const off = (last(1.44) - last(1)) / (1.5 * sd);
    const three = { made: 3, lastMps: { mean: last(1), count: 1 } };
    const sure = Math.log(made(1.44 - 2 * LOSS_LN) / made(1 - 2 * LOSS_LN));
    expect(ratio(three, 1.44, 1)).toBeCloseTo(Math.log(student(off)) + sure, 6);
  });
});

describe('reps left', () => {
  it('are 0.4 more than said, within 0.7 and a fifth of each that is left', () => {
    for (const count of [1, 3]) {
      const group = { made: 2, reserve: { mean: 2, count } };
      const density = (u: number) => {
        const sd = (0.7 + 0.2 * (possible(u) - 2)) / Math.sqrt(count);
        return (student((2 + 2 + 0.4 - possible(u)) / sd) / sd) * made(u - LOSS_LN);
      };
      for (const u of [0.5, 0.9, 1.3])
        expect(ratio(group, u, 0.7)).toBeCloseTo(Math.log(density(u) / density(0.7)), 5);
    }
  });

  it('of a work-up are one and a half, within as much, counted by its share', () => {
    for (const topShare of [1, 0.25]) {
      const density = (u: number) => student(((1 + 1.5 - possible(u)) * Math.sqrt(topShare)) / 1.5) * made(u);
      for (const u of [0.1, 0.4, 1.1])
        expect(ratio({ topShare }, u, 0.6)).toBeCloseTo(Math.log(density(u) / density(0.6)), 5);
    }
  });
});

// The mean of what lies above nought of a normal with its middle at -u (a truncated normal).
const lackedInMean = (u: number, sd: number) => -u + (sd * normalDensity(u / sd)) / normalCdf(-u / sd);

const toldByStop = (lacked: number, stopS: number, share: number) =>
  student(((stopS - stopAt(lacked)) * Math.sqrt(share)) / 0.15);

const notMade = (u: number) => 0.0015 + 0.997 - enough(u);

const stopDensity = (u: number) => {
  const slip = 0.02 * normalCdf(-u / 0.12);
  const share = slip / (slip + 0.98 * normalCdf(-u / 0.012));
  const place =
    share * toldByStop(lackedInMean(u, 0.12), 0.3, 1) +
    (1 - share) * toldByStop(lackedInMean(u, 0.012), 0.3, 1);
  return place * notMade(u);
};

describe('where a miss stopped', () => {
  it('tells what was lacking within 0.15 of the range, counted by its share', () => {
    for (const stopShare of [1, 0.25]) {
      const group = { made: 0, missed: true, stopped: { mean: 0.8, count: 1 }, stopShare };
      const density = (u: number) => toldByStop(-u, 0.8, stopShare) * notMade(u);
      for (const u of [-0.09, -0.25])
        expect(ratio(group, u, -0.16)).toBeCloseTo(Math.log(density(u) / density(-0.16)), 5);
    }
  });

  it('tells of luck or of a slip of the pen where strength was to spare', () => {
    const group = { made: 0, missed: true, stopped: { mean: 0.3, count: 1 } };
    for (const u of [0.01, 0.02, 0.03])
      expect(ratio(group, u, -0.16)).toBeCloseTo(
        Math.log(stopDensity(u) / (toldByStop(0.16, 0.3, 1) * notMade(-0.16))),
        3,
      );
  });
});

describe('along a grid', () => {
  it('each strength is as likely as by itself, whatever the session tells', () => {
    const groups = [
      { made: 3, fastestMps: { mean: 0.6, count: 2 }, lastMps: { mean: 0.4, count: 1 } },
      { made: 2, peakMps: { mean: 0.9, count: 1 }, reserve: { mean: 2, count: 3 } },
      { made: 0, missed: true, stopped: { mean: 0.4, count: 1 } },
      { made: 1, topShare: 0.5 },
      { made: 5, topShare: 0.5, count: 2 },
    ].map((group) => ({ ...single, ...group }) as EffortGroup);
    for (const told of [...groups.map((group) => [group]), groups]) {
      const session = { day: 0, groups: told };
      const { values, lnScale } = sessionLikelihood(session, read, parameters, 440, 160);
      const along = [...values].map((value) => Math.log(value) + lnScale);
      for (let i = 0; i < 160; i += 7) {
        const alone = sessionLikelihood(session, read, parameters, 440 + i, 1);
        expect(along[i]).toBeCloseTo(Math.log(alone.values[0]!) + alone.lnScale, 5);
      }
    }
  });
});

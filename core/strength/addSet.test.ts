import { describe, expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { addSet } from './addSet.ts';
import { type Belief, beliefOfMixture } from './belief.ts';
import { estimateStrength, type StrengthPosterior } from './estimateStrength.ts';
import { populationPrior, strengthPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';

const bodyMassKg = 90;
const movedBodyKg = populationShape('squat').movedBodyShare * bodyMassKg;
const range = { fromM: 0.9, toM: 1.46 };
const straight: Rigging = {
  load: bareLoad(range.fromM, range.toM),
  start: 'free',
  range,
};
const banded: Rigging = {
  ...straight,
  start: 'box',
  load: {
    ...straight.load,
    hungBands: [
      {
        verticalAt: [
          { zM: range.fromM, forceN: 150 },
          { zM: range.toM, forceN: 450 },
        ],
        count: 1,
      },
    ],
  },
};
/** Twenty weeks: heavy singles, fast doubles against bands and fives in turn, speeds falling with the weight. */
const log = Array.from({ length: 40 }, (_, session) => {
  const day = Math.floor(3.5 * session);
  const wave = 2.5 * (session % 5);
  if (session % 3 === 0)
    return [170, 180, 190].map((kg, i) =>
      set(day, straight, kg + wave, 1, { speedMps: 0.42 - 0.06 * i - 0.002 * wave, missed: kg + wave > 198 }),
    );
  if (session % 3 === 1)
    return Array.from({ length: 4 }, (__, i) =>
      set(day, banded, 110 + wave, 2, { speedMps: 0.66 - 0.01 * i - 0.004 * wave }),
    );
  return Array.from({ length: 3 }, () => set(day, straight, 147.5 + wave, 5, { left: 3 - 0.2 * wave }));
}).flat();

const carriedLn = ({ sessions }: StrengthPosterior) => sessions.at(-1)!.groups.at(-1)!.carriedLn;

/** What the whole log comes to; nothing that is added changes it. */
const whole = estimated(log);

describe('addSet', () => {
  it.each([1, 3, 8])('agrees with a full estimate after %i sets one by one', (count) => {
    const added = log.slice(-count).reduce(addSet, estimated(log.slice(0, -count)));
    const expected = maxOf(whole);
    const { median, low80, high80 } = maxOf(added);
    // Both have Monte Carlo error: answers are worth some forty to a hundred and sixty.
    expect(Math.abs(median / expected.median - 1)).toBeLessThan(0.007);
    const width = (high80 - low80) / (expected.high80 - expected.low80);
    expect(width).toBeGreaterThan(0.8);
    expect(width).toBeLessThan(1.25);
  });

  it('knows as a full estimate does how tired the sets before it had left the lifter', () => {
    const day = log.at(-1)!.day + 3;
    const fives = [1, 2, 3].map((left) => set(day, straight, 150 + 5 * left, 5, { left: 3 - left }));
    const full = carriedLn(estimated([...log, ...fives]));
    expect(full).toBeGreaterThan(0.005);
    expect(Math.abs(carriedLn(fives.reduce(addSet, whole)) / full - 1)).toBeLessThan(0.1);
  });

  it('is moved by a miss and by a made set in the right direction', () => {
    const { day } = log.at(-1)!;
    const { median } = maxOf(whole);
    const barKg = median - movedBodyKg;
    const made = addSet(whole, set(day + 3, straight, 1.02 * barKg, 1, {}));
    const missed = addSet(whole, set(day + 3, straight, 0.97 * barKg, 1, { missed: true }));
    expect(maxOf(made).median).toBeGreaterThan(median);
    expect(maxOf(missed).median).toBeLessThan(median);
  });

  it('hardly moves for ten times the weight', () => {
    const { day } = log.at(-1)!;
    const after = addSet(whole, set(day + 2, straight, 1850, 1, {}));
    expect(Math.abs(maxOf(after).median / maxOf(whole).median - 1)).toBeLessThan(0.01);
  });

  it('counts a set that no strength explains as left out', () => {
    const aboveLockout = { ...straight, load: { ...straight.load, bottomM: 1.5 } };
    const after = addSet(whole, set(log.at(-1)!.day, aboveLockout, 100, 1, {}));
    expect(after.leftOut).toEqual([log.length]);
    expect(maxOf(after)).toEqual(maxOf(whole));
  });

  it('takes the first set into what was believed before any', () => {
    const first = set(0, straight, 180, 1, {});
    const added = addSet(estimated([]), first);
    const full = maxOf(estimated([first]));
    const { median, low80 } = maxOf(added);
    expect(median).toBeGreaterThan(Math.exp(Math.log(bodyMassKg) + strengthPrior('squat').meanLn));
    expect(Math.abs(median / full.median - 1)).toBeLessThan(0.02);
    expect(Math.abs(low80 / full.low80 - 1)).toBeLessThan(0.02);
  });

  it('tells of a whole log that came set by set much the same as a full estimate', () => {
    const sets = log.slice(0, 24);
    const added = maxOf(sets.reduce(addSet, estimated([])));
    const full = maxOf(estimated(sets));
    expect(added.median).toBeGreaterThan(full.low80);
    expect(added.median).toBeLessThan(full.high80);
  });

  it('refuses a set from before the newest session', () => {
    expect(() => addSet(whole, log[0]!)).toThrow(RangeError);
    const newestDay = whole.sessions.at(-1)!.day;
    expect(() => addSet(whole, { ...log.at(-1)!, day: newestDay - 1 })).toThrow(RangeError);
  });
});

function estimated(sets: readonly SetEvidence[]): StrengthPosterior {
  const onDay = sets.at(-1)?.day ?? 0;
  const prior = populationPrior('squat');
  return estimateStrength({ lift: 'squat', reference: straight, bodyMassKg, sets, onDay, prior });
}

function maxOf({ particles }: StrengthPosterior): Belief {
  return beliefOfMixture(particles, Math.exp);
}

function set(
  day: number,
  rigging: Rigging,
  barKg: number,
  reps: number,
  { speedMps, left, missed = false }: { speedMps?: number; left?: number; missed?: boolean },
): SetEvidence {
  return {
    ...plainSingle,
    day,
    rigging,
    barKg,
    movedBodyKg,
    reps,
    made: missed ? reps - 1 : reps,
    meanSpeedsMps: speedMps === undefined || missed ? [] : [speedMps],
    repsInReserve: left ?? null,
  };
}

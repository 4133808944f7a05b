import { describe, expect, test } from 'vitest';
import { repsPossible } from '../effort/repsPossible.ts';
import { tiringOf } from '../effort/Tiring.ts';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { normalQuantile } from '../numeric/normal.ts';
import type { Capability } from '../rep/Capability.ts';
import { maxBar } from '../rep/maxBar.ts';
import { CAPACITY_SHARES, type CapacityCourse, capacityCourse } from './capacityCourse.ts';
import { drawsOf } from './drawsOf.ts';
import { estimateStrength } from './estimateStrength.ts';
import { asTold } from './modelError.ts';
import { RESERVE_SD_REPS, RESERVE_UNSAID_REPS } from './noise.ts';
import { openDraws } from './openDraws.ts';
import { populationPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';

const bodyMassKg = 100;
const range = { fromM: 0.9, toM: 1.46 };
const reference: Rigging = {
  load: bareLoad(range.fromM, range.toM),
  start: 'free',
  range,
};
const movedBodyKg = populationShape('squat').movedBodyShare * bodyMassKg;
const lifter: Capability = { ...populationShape('squat'), strengthN: 4500, movedBodyKg, range };
const maxKg = maxBar({ ...reference.load, barKg: 0 }, lifter)!.barKg;
const before = populationPrior('squat');
/** Five stretches of twelve weeks. */
const DAYS = 5 * 84;

describe('work capacity that changed in mid-season', () => {
  // From tiring 35 % sooner than is usual to 30 % later.
  const [early, late] = [0.3, -0.35];
  const { stretches, change, better } = courseOf((day) => (day < DAYS / 2 ? early : late));

  test('every stretch on either side of the change holds the truth of its own', () => {
    expect(stretches).toHaveLength(5);
    for (const [i, truth] of [
      [0, early],
      [1, early],
      [3, late],
      [4, late],
    ] as const)
      holds(stretches[i]!, truth);
  });

  test('a stretch tells clearly more than was believed before it', () => {
    // 95 % of a normal lie within 1.96 standard deviations.
    const widest = 0.85 * 2 * 1.96 * before.sd.lnTiring;
    for (const { told } of stretches)
      expect(told!.lnTiring.high95 - told!.lnTiring.low95).toBeLessThan(widest);
  });

  test('it is said to have risen', () => {
    expect(better).toBeGreaterThan(0.95);
    expect(better).toBeLessThanOrEqual(1);
    expect(change).toBe('rose');
  });

  test('the other way round it is said to have fallen', () => {
    expect(courseOf((day) => (day < DAYS / 2 ? late : early)).change).toBe('fell');
  });
});

describe('work capacity that stays', () => {
  test.each([0, 0.4, -0.4])(
    'ln tiring of %d all along is held by every stretch, and no change is claimed',
    (truth) => {
      const { stretches, change } = courseOf(() => truth);
      for (const stretch of stretches) holds(stretch, truth);
      expect(change).toBe('cannotTell');
    },
  );
});

describe('a log that hardly tells', () => {
  const singles = logOf(() => 0).filter(({ reps }) => reps === 1);

  test('stretches of singles are left empty, with what there was of it', () => {
    const { stretches, better, change } = courseFrom(singles);
    expect(stretches.map(({ told, setsThatTell }) => [told, setsThatTell])).toEqual(
      Array.from({ length: 5 }, () => [null, 0]),
    );
    expect([better, change]).toEqual([null, 'cannotTell']);
  });

  test('five easy sets in a stretch tell nothing that was not believed before', () => {
    const easy = singles.map((set) => (set.day % 14 === 0 ? { ...set, barKg: 60, reps: 2, made: 2 } : set));
    for (const { told, setsThatTell } of courseFrom(easy).stretches) {
      expect(setsThatTell).toBeGreaterThanOrEqual(5);
      expect(told).toBeNull();
    }
  });

  test('stretches before the first set are not listed, and no set is an empty course', () => {
    expect(courseFrom(logOf(() => 0).filter(({ day }) => day > DAYS - 100)).stretches).toHaveLength(2);
    expect(courseFrom([]).stretches).toEqual([]);
  });
});

/** The stretch's 95 % hold the tiring, and the reps that it stands for as the reps themselves count them. */
function holds({ told }: CapacityCourse['stretches'][number], lnTiring: number): void {
  expect(told).not.toBeNull();
  within(lnTiring, told!.lnTiring, 0);
  // A count leaves out the part of the next rep.
  CAPACITY_SHARES.forEach((share, i) => {
    within(repsAt(share * maxKg, lnTiring), told!.reps[i]!, 1);
  });
}

function within(value: number, { low95, high95 }: { low95: number; high95: number }, slack: number): void {
  expect(value).toBeGreaterThan(low95 - slack);
  expect(value).toBeLessThan(high95 + slack);
}

function repsAt(barKg: number, lnTiring: number): number {
  const usual = tiringOf('squat');
  const tiring = { ...usual, perSecond: usual.perSecond * Math.exp(lnTiring) };
  return repsPossible({ ...reference.load, barKg }, lifter, tiring);
}

/** Twice a week a single that goes and one that does not, and a set of several reps with what was left said. */
function logOf(lnTiringOn: (day: number) => number): SetEvidence[] {
  let noise = 0;
  const normal = () => {
    // The golden ratio's fraction steps evenly through the quantiles.
    noise = (noise + 0.6180339887498949) % 1;
    return normalQuantile(Math.min(Math.max(noise, 0.01), 0.99));
  };
  const log: SetEvidence[] = [];
  for (let day = 0; day <= DAYS; day += 3.5) {
    const on = Math.floor(day);
    const share = 0.78 + 0.02 * (Math.round(day / 3.5) % 4);
    const possible = repsAt(share * maxKg, lnTiringOn(on));
    const made = Math.max(2, possible - 2);
    const left = possible - made - RESERVE_UNSAID_REPS + RESERVE_SD_REPS * normal();
    log.push(
      set(on, 0.97 * maxKg, 1, 1, null),
      set(on, 1.04 * maxKg, 1, 0, null),
      set(on, share * maxKg, made, Math.min(made, possible), possible >= made ? left : null),
    );
  }
  return log;
}

function courseOf(lnTiringOn: (day: number) => number): CapacityCourse {
  return courseFrom(logOf(lnTiringOn));
}

function courseFrom(sets: SetEvidence[]): CapacityCourse {
  const posterior = estimateStrength({
    lift: 'squat',
    reference,
    bodyMassKg,
    sets,
    onDay: DAYS,
    prior: before,
  });
  return capacityCourse({
    lift: 'squat',
    reference,
    bodyMassKg,
    movedBodyKg,
    sets,
    whole: openDraws(drawsOf(asTold(posterior), 120), posterior.active, before),
    prior: before,
  });
}

function set(
  day: number,
  barKg: number,
  reps: number,
  made: number,
  repsInReserve: number | null,
): SetEvidence {
  return {
    ...plainSingle,
    day,
    rigging: reference,
    barKg,
    movedBodyKg,
    reps,
    made,
    repsInReserve,
    restS: 240,
  };
}

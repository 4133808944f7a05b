import { assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { populationShape } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { maxBar } from '../rep/maxBar.ts';
import { maxBarsOf } from './askDraws.ts';
import { type Belief, beliefOf, beliefOfMixture } from './belief.ts';
import { changeOver } from './change.ts';
import { drawsOf } from './drawsOf.ts';
import { estimateStrength, type StrengthPosterior } from './estimateStrength.ts';
import { meanLnOf } from './lattice.ts';
import { asTold } from './modelError.ts';
import { populationPrior, strengthPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';

const bodyMassKg = 100;
const movedBodyKg = populationShape('squat').movedBodyShare * bodyMassKg;
const range = { fromM: 0.9, toM: 1.46 };
const bare: Rigging['load'] = bareLoad(range.fromM, range.toM);
const straight: Rigging = { load: bare, start: 'free', range };
const banded: Rigging = {
  load: {
    ...bare,
    hungBands: [
      {
        verticalAt: [
          { zM: range.fromM, forceN: 200 },
          { zM: range.toM, forceN: 500 },
        ],
        count: 1,
      },
    ],
  },
  start: 'free',
  range,
};

describe('estimateStrength without a doubt', () => {
  // A hundred and twenty days on which 200 kg went and 205 did not: the maximum is between them.
  const posterior = estimated(
    Array.from({ length: 120 }, (_, day) => [single(day, 200, true), single(day, 205, false)]).flat(),
  );

  it('finds the straight maximum between what always goes and what never does', () => {
    const { median, low95, high95 } = barOf(posterior);
    expect(median).toBeGreaterThan(200);
    expect(median).toBeLessThan(205);
    expect(high95 - low95).toBeLessThan(10);
  });

  it('gives what the equation of motion gives in a setup never lifted, for a shape that nothing has told of', () => {
    const { median } = barOf(posterior);
    const capability = { ...populationShape('squat'), strengthN: 1, movedBodyKg, range };
    const strengthN = fitStrength({ ...bare, barKg: median }, capability);
    const expected = maxBar({ ...banded.load, barKg: 0 }, { ...capability, strengthN })!.barKg;
    const asked = { rigging: banded, movedBodyKg, equipment: 'raw' as const, platform: false };
    const bars = maxBarsOf(posterior.lift, asked, drawsOf(asTold(posterior), 401));
    expect(Math.abs(beliefOf(bars).median / expected - 1)).toBeLessThan(0.02);
  });
});

describe('estimateStrength with little or nothing', () => {
  it('gives the prior back without sets', () => {
    const { median, low80, high80 } = lnTotalOf(estimated([]));
    const { meanLn, sdLn } = strengthPrior('squat');
    expect(median).toBeCloseTo(Math.log(bodyMassKg) + meanLn, 2);
    // 80 % of a normal lie within 1.2816 standard deviations.
    expect(high80 - low80).toBeCloseTo(2 * 1.2816 * sdLn, 2);
  });

  it('stays wide after one set', () => {
    const { low80, high80, median } = lnTotalOf(estimated([single(0, 200, true)]));
    expect(high80 - low80).toBeGreaterThan(0.25);
    expect(median).toBeGreaterThan(Math.log(200 + movedBodyKg));
  });
});

describe('estimateStrength of a day long after the log', () => {
  it('believes each answer’s strength as moved as so many weeks without a set move it', () => {
    const log = [single(0, 180, true), single(3, 190, true), single(7, 200, false)];
    const [now, later] = [estimated(log), estimated(log, 7 + 70)];
    for (const [i, { parameters, strength }] of later.particles.entries()) {
      const movedLn = meanLnOf(strength) - meanLnOf(now.particles[i]!.strength);
      expect(movedLn).toBeCloseTo(changeOver(10, parameters).meanLn, 6);
    }
  });
});

describe('estimateStrength and where misses stop', () => {
  it('takes a lifter whose misses stop near lockout for one who gains less towards the top', () => {
    const [low, high] = [slopeWhereMissesStopAt(0.1), slopeWhereMissesStopAt(0.75)];
    // A third of the standard deviation by which lifters differ, at least.
    expect(low - high).toBeGreaterThan(populationPrior('squat').sd.slope / 3);
  });
});

describe('estimateStrength of a beginner', () => {
  it('finds the answers although light bars move faster than those of most and strength lies far below what was believed', () => {
    const bench = { fromM: 0.65, toM: 1.02 };
    const reference: Rigging = { load: bareLoad(bench.fromM, bench.toM), start: 'free', range: bench };
    const lightKg = [15, 17.5, 20, 22.5, 25, 27.5, 30];
    const days = Array.from({ length: 16 }, (_, day) => [
      ...lightKg.map((barKg) => ({
        ...single(4 * day, barKg, true),
        meanSpeedsMps: [0.2 + 1.5 * Math.log(30 / barKg)],
      })),
      single(4 * day, 32, false),
      single(4 * day, 32, false),
    ]);
    const sets = days.flat().map((set) => ({ ...set, rigging: reference, movedBodyKg: 0 }));
    const prior = populationPrior('bench');
    const { effective, particles } = estimateStrength({
      lift: 'bench',
      reference,
      bodyMassKg: 100,
      sets,
      onDay: 60,
      prior,
    });
    expect(effective / particles.length).toBeGreaterThan(0.2);
    const { median } = beliefOfMixture(particles, Math.exp);
    expect(median).toBeGreaterThan(30);
    expect(median).toBeLessThan(32);
  });
});

describe('estimateStrength of bars that weigh next to nothing', () => {
  it.each([1, 5, 15])('reads a stick of %s kg of which two reps more would have gone', (barKg) => {
    const sets = Array.from({ length: 6 }, (_, day) => ({
      ...single(3 * day, barKg, true),
      reps: 5,
      made: 5,
      repsInReserve: 2,
    }));
    const { low95, median, high95 } = barOf(estimated(sets));
    expect(low95).toBeLessThan(median);
    expect(median).toBeLessThan(high95);
    // A little beyond what was on it, and far from the two hundred of most at that body mass.
    expect(median).toBeGreaterThan(barKg);
    expect(high95).toBeLessThan(100);
  });
});

describe('estimateStrength and the errors of those who write logs', () => {
  const log = Array.from({ length: 30 }, (_, i) => [
    single(2 * i, 190, true),
    single(2 * i, 200, i % 3 !== 0),
    single(2 * i, 210, false),
  ]).flat();
  const right = lnTotalOf(estimated(log)).median;

  it.each([
    ['ten times the weight', 10],
    ['pounds for kilograms', 2.2046],
  ])('hardly moves for %s', (_, factor) => {
    const wrong = log.map((set, i) => (i === 46 ? { ...set, barKg: factor * set.barKg } : set));
    expect(Math.abs(lnTotalOf(estimated(wrong)).median - right)).toBeLessThan(0.01);
  });

  it('never falls for a heavier set that was made', () => {
    assert(
      property(integer({ min: 60, max: 250 }), integer({ min: 0, max: 58 }), (barKg, day) => {
        const more = lnTotalOf(estimated([...log, single(day, barKg, true)])).median;
        // Twenty-four times three answers leave so much to chance.
        expect(more).toBeGreaterThan(right - 0.003);
      }),
      { numRuns: 12, seed: 4 },
    );
  });
});

function slopeWhereMissesStopAt(stoppedAtS: number): number {
  const days = Array.from({ length: 10 }, (_, day) => [
    single(3 * day, 190, true),
    { ...single(3 * day, 205, false), stoppedAtS },
  ]);
  const { particles } = estimated(days.flat());
  return particles.reduce((sum, { weight, parameters }) => sum + weight * parameters.slope, 0);
}

function estimated(
  sets: SetEvidence[],
  onDay = Math.max(0, ...sets.map(({ day }) => day)),
): StrengthPosterior {
  return estimateStrength({
    lift: 'squat',
    reference: straight,
    bodyMassKg,
    sets,
    onDay,
    prior: populationPrior('squat'),
  });
}

function lnTotalOf({ particles }: StrengthPosterior): Belief {
  return beliefOfMixture(particles, (lnTotal) => lnTotal);
}

function barOf({ particles }: StrengthPosterior): Belief {
  return beliefOfMixture(particles, (lnTotal) => Math.exp(lnTotal) - movedBodyKg);
}

function single(day: number, barKg: number, made: boolean): SetEvidence {
  return {
    ...plainSingle,
    day,
    rigging: straight,
    barKg,
    movedBodyKg,
    made: made ? 1 : 0,
  };
}

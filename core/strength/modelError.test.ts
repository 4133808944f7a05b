import { expect, test } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { beliefOf, beliefOfMixture, sdOfBelief } from './belief.ts';
import { drawsOf } from './drawsOf.ts';
import { estimateStrength } from './estimateStrength.ts';
import { meanLnOf, normalLattice, STEP_LN } from './lattice.ts';
import { asTold, MODEL_SD_LN, modelErrorOf, REPS_SD_LN, SHAKEN_SD_LN, withModelError } from './modelError.ts';
import { populationPrior } from './parameters.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { plainSingle } from './tests/plainSingle.ts';

const range = { fromM: 0.65, toM: 1.02 };
const rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range } as const;
const bench = (sets: SetEvidence[], onDay: number) =>
  estimateStrength({
    lift: 'bench',
    reference: rigging,
    bodyMassKg: 80,
    sets,
    onDay,
    prior: populationPrior('bench'),
  });
const set = { ...plainSingle, rigging, day: 0, barKg: 80, movedBodyKg: 0 };
const five = { ...set, reps: 5, made: 5 };

// Closed form: variances of independent quantities add up, and the middle stays.
test.each<[string, SetEvidence[], number, number]>([
  ['as ever', [{ ...five, repsInReserve: 2 }], 0, MODEL_SD_LN],
  ['after a fall', [{ ...five, repsInReserve: 2 }], 1, SHAKEN_SD_LN],
  ['of fives that nobody said more about', [five, { ...set, barKg: 40 }], 0, REPS_SD_LN],
  ['of fives and one missed single', [five, { ...set, barKg: 100, made: 0 }], 0, MODEL_SD_LN],
  ['of fives and one timed rep', [five, { ...set, meanSpeedsMps: [0.5] }], 0, MODEL_SD_LN],
  ['without a log, which is wide enough', [], 0, MODEL_SD_LN],
])(
  'what is told of strength is wider by the error of the model, about the same middle: %s',
  (_, sets, shaken, sdLn) => {
    const strength = withModelError(normalLattice(5, 0.03), modelErrorOf(bench(sets, 0).sessions), shaken);
    expect(meanLnOf(strength)).toBeCloseTo(5, 6);
    expect(sdOfBelief(beliefOfMixture([{ weight: 1, strength }], (ln) => ln))).toBeCloseTo(
      Math.hypot(0.03, sdLn),
      3,
    );
  },
);

// Two thousand singles made and as many missed leave nothing open but what no set shows.
test('no log however long makes what is told of strength surer than the model is', () => {
  const sets = Array.from({ length: 2000 }, (_, i): SetEvidence[] =>
    [true, false].map((goes) => ({
      ...set,
      day: Math.floor(i / 10),
      barKg: goes ? 100 : 101,
      made: goes ? 1 : 0,
    })),
  ).flat();
  const posterior = bench(sets, 199);
  const sdLn = sdOfBelief(beliefOf(drawsOf(asTold(posterior), 400).map(({ lnTotal }) => lnTotal)));
  expect(sdLn).toBeGreaterThan(0.95 * MODEL_SD_LN);
  expect(sdLn).toBeLessThan(1.5 * MODEL_SD_LN);
});

// The memory of a fall halves no faster than e^(-weeks / 2) (change.ts): two weeks later 1 / e of it is left.
test('two weeks after a fall the error is that of a fall with a chance of 1 / e', () => {
  const particle = { strength: normalLattice(5, 0.03), newest: { shaken: 1 }, weight: 1 };
  const told = (onDay: number) => {
    const [answer] = asTold({
      particles: [particle],
      sessions: [{ day: 3, groups: [] }],
      onDay,
    } as unknown as Parameters<typeof asTold>[0]);
    const { strength } = answer!;
    const middle = meanLnOf(strength) / STEP_LN - strength.first;
    return strength.weights.reduce((sum, weight, i) => sum + weight * ((i - middle) * STEP_LN) ** 2, 0);
  };
  // No group of the day speaks of anything but reps, so that the other error is that of reps.
  const left = Math.exp(-1);
  expect(told(3) - told(17)).toBeCloseTo((1 - left) * (SHAKEN_SD_LN ** 2 - REPS_SD_LN ** 2), 4);
});

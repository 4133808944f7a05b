import { describe, expect, it, test } from 'vitest';
import { estimateStrength } from '#core/strength/estimateStrength.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { type Situation, situationLog } from './situations/situationLog.ts';
import { type SituationResult, situationOne } from './situations/situationOne.ts';

const LIFTERS = 5;
const FIRST_SEED = 400;

/** Of other lifters than those of docs/calibration.md. */
function study(situation: Situation): SituationResult[] {
  return (['hyperbola', 'power'] as const).flatMap((model) =>
    Array.from({ length: LIFTERS }, (_, i) =>
      situationOne({ situation, model, lift: 'bench', seed: FIRST_SEED + i }),
    ),
  );
}

function meanOff(results: readonly SituationResult[]): number {
  const sum = results.reduce((total, { medianKg, truthKg }) => total + Math.log(medianKg / truthKg), 0);
  return sum / results.length;
}

describe('lifters of another model than the one that estimates', () => {
  // Ten lifters tell a mean that scatters by 8 % to 2.5 %; two of these are allowed over the goal of 5 %.
  it.each(['fives', 'loss20', 'pause52', 'pounds'] as const)(
    '%s: not far above the truth on average',
    (situation) => {
      expect(meanOff(study(situation))).toBeLessThan(0.1);
    },
    60_000,
  );
});

describe('slips of unit', () => {
  const lift = 'squat';
  const slipsIn = (log: ReturnType<typeof situationLog>) =>
    estimateStrength({ ...log, prior: populationPrior(lift) }).slips;
  const ordinary = situationLog('ordinary', 'power', lift, FIRST_SEED);

  test('an ordinary log has none', () => {
    expect(slipsIn(ordinary)).toEqual([]);
  });

  test('four weeks of pounds are found as such, and no set outside them', () => {
    const log = situationLog('pounds', 'power', lift, FIRST_SEED);
    const slip = slipsIn(log).find(({ looksLike }) => looksLike === 'pounds');
    const days = new Set(slip!.sets.map((i) => log.sets[i]!.day));
    for (const day of days) {
      expect(day).toBeGreaterThanOrEqual(56);
      expect(day).toBeLessThan(84);
    }
    // Two days a week for four weeks.
    expect(days.size).toBeGreaterThanOrEqual(6);
  });

  test('a nought too many is found in the one set', () => {
    const at = ordinary.sets.findIndex(({ day, made }) => day > 50 && made === 1);
    const sets = ordinary.sets.map((set, i) => (i === at ? { ...set, barKg: 10 * set.barKg } : set));
    expect(slipsIn({ ...ordinary, sets })).toEqual([{ looksLike: 'tenfold', sets: [at] }]);
  });

  // Speed work four days in five: the rare heavy day is nearly twice as hard as the usual one, and no slip.
  test('a heavy day among light ones is none', () => {
    const maximumKg = 200;
    const sets = Array.from({ length: 100 }, (_, i) => {
      const heavy = i % 5 === 4;
      return { ...ordinary.sets[0]!, day: 3 * i, barKg: (heavy ? 0.97 : 0.5) * maximumKg, reps: 1, made: 1 };
    });
    expect(slipsIn({ ...ordinary, sets, onDay: 300 })).toEqual([]);
  });
});

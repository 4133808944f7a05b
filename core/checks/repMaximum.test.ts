import { describe, expect, it } from 'vitest';
import { RESTED, recovered } from '../effort/fatigue.ts';
import { repsAndPart } from '../effort/repsAndPart.ts';
import { repsPossible } from '../effort/repsPossible.ts';
import { type RepTable, repTable } from '../effort/repTable.ts';
import { simulateSession } from '../effort/simulateSession.ts';
import { type Tiring, tiringOf } from '../effort/Tiring.ts';
import { walkSet } from '../effort/walkSession.ts';
import { estimateHeights } from '../lifter/estimateHeights.ts';
import { lifterCapability } from '../lifter/lifterCapability.ts';
import type { Lift } from '../lifter/populationShape.ts';
import type { Start } from '../lifter/startHeights.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad, withBarKg } from '../load/compileLoad.ts';
import data from './reps.json' with { type: 'json' };

const { willardson2005, speedDoubles, ...formulas } = data;
const BODY_KG = 85;

/** A lifter of 1.75 m who just makes `maxKg`. */
function lifter(lift: Lift, way: Start['way'], maxKg: number) {
  const { bottomM, lockoutM } = estimateHeights(lift, 1.75);
  const range = { fromM: bottomM, toM: lockoutM };
  const load = {
    barKg: maxKg,
    ...bareLoad(bottomM, lockoutM),
  };
  const today = { start: way, range, bodyMassKg: BODY_KG };
  return { load, ...lifterCapability(lift, today, { ...today, load, yearsAgo: 0 }), tiring: tiringOf(lift) };
}

/** Least and greatest share of the maximum at which the formulas allow `reps` reps. */
function publishedShares(reps: number): [number, number] {
  return [Math.min(...sharesFor(reps)), Math.max(...sharesFor(reps))];
}

function sharesFor(reps: number): number[] {
  return Object.values(formulas).flatMap(({ values }) =>
    values.filter(([r]) => r === reps).map(([, maximumKg]) => 100 / maximumKg!),
  );
}

const lifts = [
  ...[1, 1.5, 2, 2.5, 3].map((bodies) => ['squat', 'free', bodies * BODY_KG] as const),
  ...[1, 1.5, 2, 2.5, 3].map((bodies) => ['deadlift', 'free', bodies * BODY_KG] as const),
  ['bench', 'free', 120] as const,
  ['bench', 'paused', 120] as const,
];

describe('reps possible at a share of the maximum', () => {
  it.each(lifts)('%s, %s, %d kg: within the spread of seven published formulas', (lift, way, maxKg) => {
    const { load, capability, tiring } = lifter(lift, way, maxKg);
    const possible = (share: number) => repsPossible({ ...load, barKg: share * maxKg }, capability, tiring);
    expect(possible(1.005)).toBe(0);
    for (const reps of [2, 3, 5, 8, 10]) {
      const [least, greatest] = publishedShares(reps);
      expect(possible(least), `${reps} reps at ${least}`).toBeGreaterThanOrEqual(reps);
      expect(possible(greatest), `${reps} reps at ${greatest}`).toBeLessThanOrEqual(reps);
    }
  });

  it.each(lifts)(
    '%s, %s, %d kg: eight by the mean of the formulas are eight, one more or less, in the squat a half to two and a half more',
    (lift, way, maxKg) => {
      const { load, capability, tiring } = lifter(lift, way, maxKg);
      const shares = sharesFor(8);
      const barKg = (maxKg * shares.reduce((sum, share) => sum + share, 0)) / shares.length;
      const reps = repsAndPart(
        repTable(compileLoad({ ...load, barKg }), capability, tiring.loweringS)!,
        tiring,
      );
      const more = lift === 'squat' ? 1.5 : 0;
      expect(Math.abs(reps - 8 - more)).toBeLessThan(1);
    },
  );
});

// How well a lifter is trained matters little to the reps at a share of the maximum (Nuzzo et al. 2024, Sports Med 54:303).
it.each(['squat', 'deadlift'] as const)(
  '%s: who lifts little beyond the own body makes as many reps of four fifths of it as who lifts three times as much',
  (lift) => {
    const reps = [1, 3].map((bodies) => {
      const maxKg = bodies * BODY_KG;
      const { load, capability, tiring } = lifter(lift, 'free', maxKg);
      const table = repTable(compileLoad({ ...load, barKg: 0.8 * maxKg }), capability, tiring.loweringS)!;
      return repsAndPart(table, tiring);
    });
    expect(Math.abs(reps[1]! - reps[0]!)).toBeLessThan(1.2);
  },
);

describe('recovery in rest', () => {
  it.each(['squat', 'bench'] as const)(
    '%s: four sets to failure lose to short rests what was counted',
    (lift) => {
      const { load, capability, tiring } = lifter(lift, 'free', lift === 'squat' ? 150 : 110);
      const heaviest = (reps: number) => {
        let barKg = load.barKg;
        while (repsPossible({ ...load, barKg }, capability, tiring) < reps) barKg -= 0.1;
        return barKg;
      };
      // Whole reps are coarse: many lifters whose load allows eight reps and not nine.
      const [eightKg, nineKg] = [heaviest(8), heaviest(9)];
      const tables = Array.from({ length: 20 }, (_, i) => {
        const barKg = eightKg - ((eightKg - nineKg) * i) / 20;
        return repTable(compileLoad({ ...load, barKg }), capability, tiring.loweringS)!;
      });
      const total = (restS: number) =>
        tables.reduce((sum, table) => sum + repsOfFourSets(table, restS, tiring), 0);
      const [twoMinutes, fiveMinutes] = willardson2005.values[lift] as [number, number];
      expect(Math.abs(total(120) / total(60) - twoMinutes)).toBeLessThan(willardson2005.tolerance);
      expect(Math.abs(total(300) / total(60) - fiveMinutes)).toBeLessThan(willardson2005.tolerance);
    },
  );

  it.each(['squat', 'bench', 'deadlift'] as const)(
    '%s: doubles at half the maximum keep their speed',
    (lift) => {
      const { load, capability, tiring } = lifter(lift, 'free', 180);
      const { shares, restS } = speedDoubles.values;
      for (const share of shares) {
        const table = repTable(withBarKg(compileLoad(load), share * 180), capability, tiring.loweringS)!;
        const [block] = simulateSession([{ table, sets: 8, reps: 2, restS }], tiring);
        expect(block!.lastMps! / block!.firstMps).toBeGreaterThan(0.94);
      }
    },
  );
});

function repsOfFourSets(table: RepTable, restS: number, tiring: Tiring): number {
  let fatigue = RESTED;
  let reps = 0;
  for (let set = 0; set < 4; set++) {
    const steps = walkSet(table, 50, tiring, fatigue);
    reps += steps.length - 1;
    fatigue = recovered(steps.at(-1)!.after, restS, tiring);
  }
  return reps;
}

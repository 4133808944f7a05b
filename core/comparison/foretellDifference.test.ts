import { describe, expect, it } from 'vitest';
import { seededChance } from '../numeric/seededChance.ts';
import type { Way } from './drawWays.ts';
import { type Foreseen, foretellDifference } from './foretellDifference.ts';
import { clubScatter } from './Scatter.ts';
import { wayDifference } from './wayDifference.ts';

const eight: Foreseen = {
  lifters: [4, 4],
  testWeeks: [0, 4, 8, 12],
  scatter: { gainSd: 0.002, testSd: 0.02 },
  leavingShare: 0,
  seed: 5,
  plays: 60,
};
const detectable = (change: Partial<Foreseen>) => foretellDifference({ ...eight, ...change }).detectableLn!;

/** Tests of a made-up crew; lifters of the second way gain `differenceLn` more up to week 12. */
function played(differenceLn: number, seed: number) {
  const chance = seededChance(seed);
  return Array.from({ length: 8 }, (_, i) => {
    const [level, gain] = [5 + 0.2 * chance.normal(), 0.002 + 0.002 * chance.normal()];
    const way = (i % 2) as Way;
    return eight.testWeeks.map((week) => ({
      lifterId: `${i}`,
      way,
      week,
      lnValue: level + (gain + (way * differenceLn) / 12) * week + 0.02 * chance.normal(),
    }));
  }).flat();
}

describe('the difference that could be seen', () => {
  it('is seen in four of five comparisons that have it, each weighed like a real one', () => {
    const truth = detectable({ plays: 120 });
    const seen = Array.from({ length: 150 }, (_, seed) => {
      const { low95, high95 } = wayDifference(played(truth, seed), 12)!.difference;
      return low95 > 0 || high95 < 0;
    });
    // A share of 80 % of 150 scatters by 3.3 points (binomial): three of those are allowed.
    expect(Math.abs(seen.filter(Boolean).length / seen.length - 0.8)).toBeLessThan(0.1);
  });

  it('that is none is seen in one of twenty comparisons at most', () => {
    const chance = foretellDifference({ ...eight, lifters: [10, 10] }).chanceToSee(0);
    // Ranges of a mixed model are a little too wide where few lifters leave it open whether gains scatter at all.
    expect(chance).toBeLessThan(0.06);
    expect(chance).toBeGreaterThan(0.03);
  });

  it('shrinks with lifters, with tests and with steadier tests, and grows where lifters leave', () => {
    const usual = detectable({});
    expect(detectable({ lifters: [12, 12] })).toBeLessThan(0.7 * usual);
    expect(detectable({ testWeeks: [0, 2, 4, 6, 8, 10, 12] })).toBeLessThan(usual);
    expect(detectable({ scatter: { gainSd: 0.002, testSd: 0.005 } })).toBeLessThan(usual);
    expect(detectable({ leavingShare: 0.3 })).toBeGreaterThan(usual);
  });

  it('of two lifters a way, or of nearly all leaving, is none at all', () => {
    expect(foretellDifference({ ...eight, lifters: [2, 2] }).detectableLn).toBeNull();
    expect(foretellDifference({ ...eight, leavingShare: 1, testWeeks: [0, 12] }).detectableLn).toBeNull();
  });

  it('is the same for the same seed', () => {
    expect(detectable({ plays: 20 })).toBe(detectable({ plays: 20 }));
    expect(detectable({ plays: 20, seed: 6 })).not.toBe(detectable({ plays: 20 }));
  });
});

const alikeTests = (lifters: number, weeks: number[]) =>
  Array.from({ length: lifters }, (_, i) =>
    weeks.map((week) => ({
      lifterId: `${i}`,
      week,
      lnValue: 5 + 0.001 * week * (i + 1) + 0.01 * ((week + i) % 3),
    })),
  ).flat();

describe("a club's own scatter", () => {
  it('comes near the one that its tests were made with, which counts more the more lifters there are', () => {
    const chance = seededChance(3);
    const tests = Array.from({ length: 40 }, (_, i) => {
      const [level, gain] = [5 + 0.2 * chance.normal(), 0.001 + 0.006 * chance.normal()];
      return [0, 3, 6, 9, 12].map((week) => ({
        lifterId: `${i}`,
        week,
        lnValue: level + gain * week + 0.01 * chance.normal(),
      }));
    }).flat();
    const scatter = clubScatter(tests, 12);
    expect(scatter).toMatchObject({ known: 'measured', lifters: 40, tests: 200 });
    // Of 40 lifters a standard deviation is known to a ninth (1 / sqrt(2 x 39)), of 120 free tests to a fifteenth; three of each.
    expect(Math.abs(scatter.gainSd / 0.006 - 1)).toBeLessThan(0.34);
    expect(Math.abs(scatter.testSd / 0.01 - 1)).toBeLessThan(0.2);
  });

  it('is never taken for none, though every test lies on a line', () => {
    const straight = Array.from({ length: 6 }, (_, i) =>
      [0, 4, 8].map((week) => ({ lifterId: `${i}`, week, lnValue: 5 + 0.001 * i * week })),
    ).flat();
    const { gainSd, testSd } = clubScatter(straight, 12);
    // Half a kilogram of 250 is what discs can show.
    expect(testSd).toBe(0.002);
    expect(gainSd).toBeGreaterThan(0.001);
  });

  it('is assumed, and says so, of four lifters or of two tests each', () => {
    expect(clubScatter(alikeTests(4, [0, 4, 8]), 12).known).toBe('assumed');
    expect(clubScatter(alikeTests(5, [0, 8]), 12).known).toBe('assumed');
    expect(clubScatter(alikeTests(5, [0, 4, 8]), 12).known).toBe('measured');
  });
});

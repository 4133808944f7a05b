import { describe, expect, it } from 'vitest';
import { calibrateOne } from './calibrateOne.ts';
import { chiSquareAbove, rankSummary } from './rankSummary.ts';

describe('chiSquareAbove', () => {
  // Any table of the distribution: 5 % points for 9 degrees of freedom 16.919, 99 % point 2.088.
  it('agrees with the printed tables', () => {
    expect(chiSquareAbove(16.919, 9)).toBeCloseTo(0.05, 2);
    expect(chiSquareAbove(2.088, 9)).toBeCloseTo(0.99, 2);
  });
});

describe('rankSummary', () => {
  it('tells even ranks from heaped ones', () => {
    const even = Array.from({ length: 200 }, (_, i) => (i + 0.5) / 200);
    expect(rankSummary(even)).toMatchObject({ count: 200, in80: 0.8, in95: 0.95 });
    expect(rankSummary(even).p).toBeGreaterThan(0.99);
    expect(rankSummary(even.map((rank) => rank ** 2)).p).toBeLessThan(0.001);
  });
});

describe('estimateStrength on lifters drawn from its own prior', () => {
  // The full study with its 500 lifters stands in docs/calibration.md; of 12 lifters the binomial's 99.8 % ranges are asked.
  it('holds the truth as often as it says', () => {
    const lifters = Array.from({ length: 12 }, (_, index) => calibrateOne(2, index));
    const totals = rankSummary(lifters.map(({ ranks }) => ranks['lnTotal']!));
    expect(totals.in80).toBeGreaterThanOrEqual(5 / 12);
    expect(totals.in95).toBeGreaterThanOrEqual(8 / 12);
    expect(totals.p).toBeGreaterThan(0.001);
    const parameters = lifters.flatMap(({ ranks }) =>
      Object.entries(ranks).flatMap(([name, rank]) => (name === 'lnTotal' ? [] : [rank])),
    );
    const { in80, in95 } = rankSummary(parameters);
    expect(in80).toBeGreaterThan(0.68);
    expect(in80).toBeLessThan(0.92);
    expect(in95).toBeGreaterThan(0.88);
  }, 60_000);
});

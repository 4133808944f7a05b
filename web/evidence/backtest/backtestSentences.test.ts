import { expect, test } from 'vitest';
import type { BacktestReport, BacktestScore } from '#contract/projection/backtestReport.ts';
import { backtestSentences } from './backtestSentences.ts';

const off = (meanKg: number, meanAbsKg: number) => ({
  count: 20,
  meanKg,
  meanAbsKg,
  meanShare: 0,
  meanAbsShare: 0,
});

function reportOf(held: number, errors: BacktestScore['errors']): BacktestReport {
  const coverage = [{ share: 0.8, held, least: 0, most: 1, heldMade: 0 }];
  const score = { of: 'all' as const, lifts: 100, lifters: 5, coverage, errors, errorsTogether: errors };
  return { scores: [score] } as unknown as BacktestReport;
}

test('ranges are called too narrow or too wide only beyond what chance makes of so many lifts', () => {
  const none = { estimate: null, bestSoFar: null, rule: null };
  // 0.8 of 100 lifts scatters by 4: 73 and 87 are within twice that.
  expect(backtestSentences(reportOf(0.73, none), 'kg')).toEqual([
    'Ranges meant to hold 80 of 100 results held 73, within what chance alone would give.',
  ]);
  expect(backtestSentences(reportOf(0.71, none), 'kg')[0]).toContain('too narrow');
  expect(backtestSentences(reportOf(0.89, none), 'kg')[0]).toContain('wider than they need be');
});

test('the three ways stand side by side in the unit of the view, and the nearest is named, also when it is not ours', () => {
  const errors = { estimate: off(-1, 5), bestSoFar: off(-4, 6), rule: off(0, 4.5359237) };
  const [, said] = backtestSentences(reportOf(0.8, errors), 'lb');
  expect(said).toContain('the rule of gym gain by 10.0 lb');
  expect(said).toContain('2.2 lb too little');
  expect(said).toContain('the rule came nearest');
});

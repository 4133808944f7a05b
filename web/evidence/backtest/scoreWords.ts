import type { BacktestScore } from '#contract/projection/backtestReport.ts';

/** The groups of lifts that are scored, as the tables name them. */
export const scoreWords: Record<BacktestScore['of'], string> = {
  all: 'All lifts',
  squat: 'Squat',
  bench: 'Bench press',
  deadlift: 'Deadlift',
  raw: 'Raw',
  equipped: 'In equipment',
};

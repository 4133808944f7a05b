import type { BacktestReport, BacktestScore, Errors } from '#contract/projection/backtestReport.ts';
import { counted } from '#contract/words/counted.ts';
import { percentFigure } from '#contract/words/percent.ts';
import { table } from './table.ts';

const groupWords: Record<BacktestScore['of'], string> = {
  all: 'all lifts',
  squat: 'squat',
  bench: 'bench press',
  deadlift: 'deadlift',
  raw: 'raw',
  equipped: 'in equipment',
};

/** The scores of a backtest as tables. */
export function backtestText(report: BacktestReport): string {
  const { from, to, meets, lifts, unforetold, scores, attempts, fifths } = report;
  if (from === null)
    return `No past meet could be forecast${unforetold > 0 ? unknownBefore(unforetold) : ''}.\n`;
  const { brier } = attempts;
  return [
    `${counted(lifts.length, 'lift')} at ${counted(meets, 'meet')}, ${from} to ${to}, each forecast from the days before it alone.`,
    ...(unforetold > 0 ? [`Not forecast${unknownBefore(unforetold)}.`] : []),
    '',
    'How often an interval held the truth, % (in brackets: at least, at most; last: the best made itself)',
    table(['', 'lifts', '50 %', '', '', '80 %', '', '', '95 %', '', ''], scores.map(coverageRow)),
    '',
    `Results by fifths of their forecasts, %: ${fifths.map(percentFigure).join(', ')} (20 each if they are right).`,
    '',
    'Forecast minus best made: mean, mean size in kg, mean size in %',
    table(
      errorHead,
      scores.map((score) => errorRow(score, score.errors)),
    ),
    '',
    'The same for only those lifts for which all three say something',
    table(
      errorHead,
      scores.map((score) => errorRow(score, score.errorsTogether)),
    ),
    '',
    `Of ${counted(attempts.count, 'attempt')}: forecast chance, how many, expected to be made, made`,
    table(
      ['chance', 'attempts', 'expected', 'made'],
      attempts.bins.map((bin) => [
        `${percentFigure(bin.from)} to ${percentFigure(bin.to)} %`,
        bin.count,
        bin.expected.toFixed(1),
        bin.made,
      ]),
    ),
    '',
    `Brier score over ${counted(attempts.brierCount, 'attempt')}: estimate ${score(brier.estimate)}, best so far ${score(brier.bestSoFar)}, gym gain ${score(brier.rule)} (less is better).`,
    '',
  ].join('\n');
}

const errorHead = [
  '',
  'estimate',
  '',
  '',
  'lifts',
  'best so far',
  '',
  '',
  'lifts',
  'gym gain',
  '',
  '',
  'lifts',
];

function coverageRow({ of, lifts, coverage }: BacktestScore): (string | number)[] {
  return [
    groupWords[of],
    lifts,
    ...coverage.flatMap(({ held, least, most, heldMade }) => [
      percentFigure(held),
      `(${percentFigure(least)}, ${percentFigure(most)})`,
      percentFigure(heldMade),
    ]),
  ];
}

function errorRow({ of }: BacktestScore, errors: BacktestScore['errors']): (string | number)[] {
  return [
    groupWords[of],
    ...errorCells(errors.estimate),
    ...errorCells(errors.bestSoFar),
    ...errorCells(errors.rule),
  ];
}

function errorCells(one: Errors): (string | number)[] {
  if (one === null) return ['', '', '', 0];
  return [one.meanKg.toFixed(1), one.meanAbsKg.toFixed(1), (100 * one.meanAbsShare).toFixed(1), one.count];
}

function unknownBefore(count: number): string {
  return `: ${counted(count, 'lift')} about which nothing was known before`;
}

function score(value: number | null): string {
  return value === null ? 'none' : value.toFixed(3);
}

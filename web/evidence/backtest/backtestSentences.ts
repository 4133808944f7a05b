import type { BacktestReport, Errors } from '#contract/projection/backtestReport.ts';
import { counted } from '#contract/words/counted.ts';
import { fromSi } from '#core/units/units.ts';

/** What the backtest says, in a coach's words: ranges first, then the three ways side by side. */
export function backtestSentences({ scores }: BacktestReport, unit: 'kg' | 'lb'): string[] {
  const all = scores.find(({ of }) => of === 'all');
  if (!all) return [];
  const wide = all.coverage.find(({ share }) => share === 0.8);
  const { estimate, bestSoFar, rule } = all.errorsTogether;
  const mass = (kg: number) => `${fromSi(kg, unit).toFixed(1)} ${unit}`;
  const told = (one: NonNullable<Errors>) => mass(one.meanAbsKg);
  return [
    ...(wide
      ? [
          `Ranges meant to hold 80 of 100 results held ${(100 * wide.held).toFixed(0)}${verdict(wide.held, 0.8, all.lifts)}.`,
        ]
      : []),
    ...(estimate && bestSoFar && rule
      ? [
          `Over the ${counted(estimate.count, 'lift')} for which all three say something the estimate was off by ${told(estimate)} on average (${leaning(estimate.meanKg, mass)}), the best so far by ${told(bestSoFar)}, the rule of gym gain by ${told(rule)}: ${leader(estimate, bestSoFar, rule)}.`,
        ]
      : []),
  ];
}

/** Within what chance alone makes of so many lifts, twice its standard deviation. */
function verdict(held: number, share: number, count: number): string {
  const apart = held - share;
  if (Math.abs(apart) <= 2 * Math.sqrt((share * (1 - share)) / count))
    return ', within what chance alone would give';
  return apart > 0 ? ': they are wider than they need be' : ': they are too narrow';
}

/** Where the forecasts lay beside what was made. */
function leaning(meanKg: number, mass: (kg: number) => string): string {
  return `on balance ${mass(Math.abs(meanKg))} too ${meanKg < 0 ? 'little' : 'much'}`;
}

function leader(
  estimate: NonNullable<Errors>,
  bestSoFar: NonNullable<Errors>,
  rule: NonNullable<Errors>,
): string {
  const [first] = [
    { name: 'the estimate', by: estimate.meanAbsKg },
    { name: 'the best so far', by: bestSoFar.meanAbsKg },
    { name: 'the rule', by: rule.meanAbsKg },
  ].sort((a, b) => a.by - b.by);
  return `${first!.name} came nearest`;
}

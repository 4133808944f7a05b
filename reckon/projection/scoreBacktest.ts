import type {
  BacktestReport,
  BacktestScore,
  Errors,
  ForetoldLift,
} from '#contract/projection/backtestReport.ts';
import { coverage, transformBins } from '#core/projection/censoredScore.ts';
import { brierScore, chanceBins, type Tried } from '#core/projection/chanceScore.ts';

const SHARES = [0.5, 0.8, 0.95] as const;

/** How well past meets were foretold. */
export function scoreBacktest(lifts: readonly ForetoldLift[], unforetold: number): BacktestReport {
  const days = lifts.map(({ on }) => on).sort();
  return {
    from: days[0] ?? null,
    to: days.at(-1) ?? null,
    meets: new Set(lifts.map(({ on, place }) => `${on} ${place}`)).size,
    unforetold,
    lifts: [...lifts],
    scores: groups.map(({ of, has }) => scoreOf(of, lifts.filter(has))).filter((score) => score.lifts > 0),
    fifths: transformBins(
      lifts.map(({ placed }) => placed),
      5,
    ),
    attempts: attemptsOf(lifts),
  };
}

const groups: { of: BacktestScore['of']; has: (one: ForetoldLift) => boolean }[] = [
  { of: 'all', has: () => true },
  { of: 'squat', has: ({ lift }) => lift === 'squat' },
  { of: 'bench', has: ({ lift }) => lift === 'bench' },
  { of: 'deadlift', has: ({ lift }) => lift === 'deadlift' },
  { of: 'raw', has: ({ equipment }) => equipment === 'raw' },
  { of: 'equipped', has: ({ equipment }) => equipment !== 'raw' },
];

/** The three ways to foretell a lift; null: it has nothing to say. */
const waysOf = {
  estimate: ({ maxKg }: ForetoldLift): number | null => maxKg.median,
  bestSoFar: ({ bestSoFarKg }: ForetoldLift) => bestSoFarKg,
  rule: ({ ruleKg }: ForetoldLift) => ruleKg,
};
type Way = keyof typeof waysOf;

function scoreOf(of: BacktestScore['of'], lifts: readonly ForetoldLift[]): BacktestScore {
  const placed = lifts.map((one) => one.placed);
  const made = lifts.filter(({ madeKg }) => madeKg !== null);
  const together = made.filter(({ bestSoFarKg, ruleKg }) => bestSoFarKg !== null && ruleKg !== null);
  return {
    of,
    lifts: lifts.length,
    lifters: new Set(lifts.map(({ lifterId }) => lifterId)).size,
    coverage: SHARES.map((share) => ({ ...coverage(placed, share), heldMade: heldMade(made, share) })),
    errors: forEachWay((way) => errorsOf(made, way)),
    errorsTogether: forEachWay((way) => errorsOf(together, way)),
  };
}

function forEachWay<T>(find: (way: Way) => T): Record<Way, T> {
  return { estimate: find('estimate'), bestSoFar: find('bestSoFar'), rule: find('rule') };
}

function heldMade(made: readonly ForetoldLift[], share: number): number {
  const [from, to] = [(1 - share) / 2, (1 + share) / 2];
  const held = made.filter(({ placed }) => placed.low >= from && placed.low <= to);
  return made.length === 0 ? 0 : held.length / made.length;
}

function errorsOf(made: readonly ForetoldLift[], way: Way): Errors {
  const pairs = made.flatMap((one) => {
    const foretoldKg = waysOf[way](one);
    return foretoldKg === null ? [] : [{ errorKg: foretoldKg - one.madeKg!, madeKg: one.madeKg! }];
  });
  if (pairs.length === 0) return null;
  const mean = (value: (pair: (typeof pairs)[number]) => number) =>
    pairs.reduce((sum, pair) => sum + value(pair), 0) / pairs.length;
  return {
    count: pairs.length,
    meanKg: mean(({ errorKg }) => errorKg),
    meanAbsKg: mean(({ errorKg }) => Math.abs(errorKg)),
    meanShare: mean(({ errorKg, madeKg }) => errorKg / madeKg),
    meanAbsShare: mean(({ errorKg, madeKg }) => Math.abs(errorKg) / madeKg),
  };
}

/** Only attempts that were logged: of a result written down alone it is not known what was missed. */
function attemptsOf(lifts: readonly ForetoldLift[]): BacktestReport['attempts'] {
  const all = lifts.flatMap(({ attempts }) => attempts);
  const known = lifts.filter(({ bestSoFarKg, ruleKg }) => bestSoFarKg !== null && ruleKg !== null);
  const stepped = (way: Way) =>
    known.flatMap((one) =>
      one.attempts.map(({ barKg, made }): Tried => ({ made, chance: barKg <= waysOf[way](one)! ? 1 : 0 })),
    );
  return {
    count: all.length,
    bins: chanceBins(all),
    brier: {
      estimate: brierScore(known.flatMap(({ attempts }) => attempts)),
      bestSoFar: brierScore(stepped('bestSoFar')),
      rule: brierScore(stepped('rule')),
    },
    brierCount: known.reduce((sum, { attempts }) => sum + attempts.length, 0),
  };
}

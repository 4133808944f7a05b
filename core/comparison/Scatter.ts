import { grouped } from '#core/numeric/grouped.ts';
import { fitMixed } from '../evidence/fitMixed.ts';
import { ASSUMED_SHARE } from '../evidence/liftNoise.ts';
import { populationPrior, WEEK_SD } from '../strength/parameters.ts';

/** How a club's tests scatter, in ln. */
export interface Scatter {
  /** Standard deviation between lifters of the gain a week, over a time as long as the comparison. */
  gainSd: number;
  /** Standard deviation of a single test about a lifter's own line. */
  testSd: number;
  known: 'measured' | 'assumed';
  /** The club's own mean gain a week; null where it is assumed. */
  gainPerWeek: number | null;
  lifters: number;
  tests: number;
}

export interface PastTest {
  lifterId: string;
  week: number;
  lnValue: number;
}

const LEAST_LIFTERS = 5;
const LEAST_TESTS_EACH = 3;
/** A few lifters say little of how gains scatter: the assumed scatter counts as if so many more had shown it (judgement). */
const ASSUMED_WORTH = 4;
/** No test is surer than what discs can show: half a kilogram of 250 (judgement). */
const LEAST_TEST_SD = 0.002;

/**
 * Of lifters before any log, by the prior of the estimate: own gains a week (5 % a year, give or take 8), and each week's chance
 * change, which over `weeks` shows as a gain of its own; a single test as in `liftNoise`. The lift hardly matters to these.
 */
export function assumedScatter(weeks: number): Scatter {
  const gainSd = Math.sqrt(populationPrior('squat').sd.weekGain ** 2 + WEEK_SD ** 2 / weeks);
  return { gainSd, testSd: ASSUMED_SHARE, known: 'assumed', gainPerWeek: null, lifters: 0, tests: 0 };
}

/**
 * The club's own scatter from tests of as many weeks before the start as the comparison will last, of lifters with three at least in
 * different weeks; assumed where fewer than five such lifters are there.
 */
export function clubScatter(tests: readonly PastTest[], weeks: number): Scatter {
  const assumed = assumedScatter(weeks);
  const lifters = [...grouped(tests, ({ lifterId }) => lifterId).values()].filter(
    (own) => new Set(own.map(({ week }) => week)).size >= LEAST_TESTS_EACH,
  );
  if (lifters.length < LEAST_LIFTERS) return assumed;
  const used = lifters.flat();
  const fit = fitMixed({
    values: used.map(({ lnValue }) => lnValue),
    fixed: used.map(({ week }) => [1, week]),
    random: used.map(({ week }) => [1, week]),
    groups: used.map(({ lifterId }) => lifterId),
    method: 'reml',
  });
  const variance =
    (lifters.length * fit.randomSds[1]! ** 2 + ASSUMED_WORTH * assumed.gainSd ** 2) /
    (lifters.length + ASSUMED_WORTH);
  return {
    gainSd: Math.sqrt(variance),
    testSd: Math.max(fit.residualSd, LEAST_TEST_SD),
    known: 'measured',
    gainPerWeek: fit.fixed[1]!,
    lifters: lifters.length,
    tests: used.length,
  };
}

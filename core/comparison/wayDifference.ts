import { grouped } from '#core/numeric/grouped.ts';
import { contrast, type Effect } from '../evidence/contrast.ts';
import { fitMixed, type MixedFit } from '../evidence/fitMixed.ts';
import type { MixedProblem } from '../evidence/mixedProfile.ts';
import type { Way } from './drawWays.ts';

/** One test of a lifter who was drawn: ln of what was lifted, in so many weeks from the start. */
export interface WayTest {
  lifterId: string;
  way: Way;
  week: number;
  lnValue: number;
}

/** What two ways gained up to a week, in ln. */
export interface WayDifference {
  /** Lifters of either way with two tests or more in different weeks; one test says nothing of a gain. */
  lifters: [number, number];
  gains: [Effect, Effect];
  /** The second way's gain less the first's. */
  difference: Effect;
}

/** Fewer of either way tell nothing (judgement). */
export const LEAST_A_WAY = 3;
/** So many with three tests or more tell how lifters' gains scatter apart from single tests. */
const LEAST_WITH_THREE = 3;
/** In ln; less is rounding. */
const NO_SCATTER = 1e-9;

/**
 * `ln = level + level' way + (gain + gain' way) week + own level + own gain x week + noise`, by restricted maximum likelihood, ranges by
 * Satterthwaite's degrees of freedom. Everybody counts by the way drawn, with every test there is: who leaves is taken to have gone
 * on like the others of that way, as far as the own tests do not say otherwise. With two tests each the own gain and the noise are one,
 * and it is the t test of two groups' gains. Null where either way has fewer than `LEAST_A_WAY` lifters who tell of a gain.
 * Throws a `RangeError` where every test lies exactly on a line.
 */
export function wayDifference(tests: readonly WayTest[], atWeek: number): WayDifference | null {
  const lifters = tellingOf(tests);
  if (Math.min(...lifters) < LEAST_A_WAY) return null;
  const fit = fitMixed(wayProblem(tests));
  if (!(fit.residualSd > NO_SCATTER))
    throw new RangeError('the tests do not scatter at all, so that no range can be given');
  return {
    lifters,
    gains: [contrast(fit, [0, 0, atWeek, 0]), contrast(fit, [0, 0, atWeek, atWeek])],
    difference: differenceAt(fit, atWeek),
  };
}

export function differenceAt(fit: MixedFit, atWeek: number): Effect {
  return contrast(fit, [0, 0, 0, atWeek]);
}

/** Columns: level, second way, week, week in the second way. */
export function wayProblem(tests: readonly WayTest[], slopes = slopesTell(tests)): MixedProblem {
  return {
    values: tests.map(({ lnValue }) => lnValue),
    fixed: tests.map(({ way, week }) => [1, way, week, way * week]),
    random: tests.map(({ week }) => (slopes ? [1, week] : [1])),
    groups: tests.map(({ lifterId }) => lifterId),
    method: 'reml',
  };
}

export function tellingOf(tests: readonly WayTest[]): [number, number] {
  const counts: [number, number] = [0, 0];
  for (const own of grouped(tests, ({ lifterId }) => lifterId).values())
    if (weeksOf(own) > 1) counts[own[0]!.way]++;
  return counts;
}

function slopesTell(tests: readonly WayTest[]): boolean {
  const lifters = [...grouped(tests, ({ lifterId }) => lifterId).values()];
  return lifters.filter((own) => weeksOf(own) > 2).length >= LEAST_WITH_THREE;
}

function weeksOf(own: readonly WayTest[]): number {
  return new Set(own.map(({ week }) => week)).size;
}

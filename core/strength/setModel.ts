import { lagrange } from '../numeric/lagrange.ts';
import type { Kg, LnKg, Share } from '../numeric/quantity.ts';
import type { Rigging } from './Rigging.ts';
import type { Response, ResponseTable } from './response.ts';

/** One rigging at one total mass: everything that a set there can tell, as a function of the parameters. */
export interface SetModel {
  start: Rigging['start'];
  lnTotal: LnKg;
  /** Tells the limit at this mass. */
  limit: MassMixture;
  /** Share of the mean load that bands carry. */
  bandShare: Share;
  /** Speed, effort and place of a miss by surplus; the same object for masses that differ little. */
  motion: Motion;
}

/** What lies between a rigging's tables: how much each of those nearest in mass counts. */
export interface MassMixture {
  tables: readonly ResponseTable[];
  weights: readonly number[];
}

export interface Motion extends MassMixture {
  /** As in a table. */
  peakRatio: Float64Array;
  /** Share of the moved body in the mean load. */
  bodyShare: Share;
}

/** As a function of the surplus reps hardly change with the mass: masses this near in ln share their motion. */
const SHARED_LN = 0.1;
/** The same for the moved body's share of the load; where it is all but all of it, the bar is taken for a tenth: who tires of nothing could go on for ever. */
const SHARED_BODY = 0.1;
const MOST_BODY_STEPS = 9;

/** Reads a response at one total mass, body included: a parabola through the three tables nearest to it, or all there are. */
export function setModel(
  response: Response,
  start: Rigging['start'],
  lnTotal: LnKg,
  movedBodyKg: Kg,
): SetModel {
  const limit = mixtureAt(response, lnTotal);
  const step = response.tables.length === 1 ? 0 : Math.round(lnTotal / SHARED_LN);
  const bandShare = limit.tables.reduce((sum, table, i) => sum + limit.weights[i]! * table.bandShare, 0);
  const bodyShare = (1 - bandShare) * movedBodyKg * Math.exp(0 - lnTotal);
  const bodyStep = Math.min(Math.round(bodyShare / SHARED_BODY), MOST_BODY_STEPS);
  return { start, lnTotal, limit, bandShare, motion: sharedMotion(response, step, bodyStep) };
}

const shared = new WeakMap<Response, Map<string, Motion>>();

function sharedMotion(response: Response, step: number, bodyStep: number): Motion {
  const bySteps = shared.get(response) ?? new Map<string, Motion>();
  shared.set(response, bySteps);
  const steps = `${step} ${bodyStep}`;
  const motion =
    bySteps.get(steps) ?? motionOf(mixtureAt(response, step * SHARED_LN), bodyStep * SHARED_BODY);
  bySteps.set(steps, motion);
  return motion;
}

function motionOf({ tables, weights }: MassMixture, bodyShare: Share): Motion {
  return {
    tables,
    weights,
    bodyShare,
    peakRatio: tables[0]!.peakRatio.map((_, i) =>
      tables.reduce((sum, { peakRatio }, t) => sum + weights[t]! * peakRatio[i]!, 0),
    ),
  };
}

/** A parabola through the three masses nearest to `lnTotal`, through all where there are fewer. */
export function mixtureAt({ lnTotals, tables }: Response, lnTotal: LnKg): MassMixture {
  const nearest = lnTotals
    .map((_, i) => i)
    .sort((a, b) => Math.abs(lnTotals[a]! - lnTotal) - Math.abs(lnTotals[b]! - lnTotal))
    .slice(0, 3);
  const weights = lagrange(lnTotals, nearest, lnTotal);
  return { tables: nearest.map((i) => tables[i]!), weights: nearest.map((i) => weights[i]!) };
}

import { normalCdf } from '../numeric/normal.ts';
import { STEP_LN } from './lattice.ts';
import {
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_UNSAID_REPS,
  reserveSd,
  SET_SD_LN,
  SLIP_SD_LN,
  SLIP_SHARE,
  STOP_SD_S,
  speedSdMps,
  TAIL,
  WILD_SHARE,
} from './noise.ts';
import type { Parameters } from './parameters.ts';
import { atSurplus, type ReadModel, type ReadTable, repsPossible, stopAt } from './readGroup.ts';
import type { EffortGroup, Session, Told } from './sessions.ts';
import type { SetModel } from './setModel.ts';
import { LEFT_REPS, LEFT_SD_REPS } from './workUps.ts';

/** Alike sets of a day count as no more than this many: what one of them hides, the others hide too. */
export const MOST_ALIKE = 3;

/**
 * Likelihood of all sets of a session over the day's strength at the grid points from `first`, scaled by `exp(lnScale)`.
 * The values stand in a buffer that the next call writes over: a new one for each session would be most of the work.
 */
export function sessionLikelihood(
  session: Session,
  read: (model: SetModel) => ReadModel,
  parameters: Parameters,
  first: number,
  count: number,
): { values: Float64Array; lnScale: number } {
  const values = scratch(count).fill(1);
  let lnScale = 0;
  for (const group of session.groups) {
    const { straightLn, table } = read(group.model);
    const offset =
      straightLn +
      group.carriedLn * Math.exp(parameters.lnTiring) -
      (group.equipment === null ? 0 : parameters[group.equipment]) -
      (group.platform ? parameters.platform : 0);
    lnScale += multiplyIn(values, first * STEP_LN - offset, group, table);
  }
  return { values, lnScale };
}

let buffer = new Float64Array(1024);
function scratch(count: number): Float64Array {
  if (buffer.length < count) buffer = new Float64Array(2 * count);
  return buffer.subarray(0, count);
}

/** Multiplies one group's likelihood in, the first value at surplus `from`; returns the ln of what does not depend on strength. */
function multiplyIn(values: Float64Array, from: number, group: EffortGroup, table: ReadTable): number {
  const { made, missed } = group;
  const times = Math.min(group.count, MOST_ALIKE);
  let lnScale = 0;
  if (missed) {
    const enough = made > 0 ? table.needed(made) : Number.NEGATIVE_INFINITY;
    multiplyMissed(values, from, enough, table.needed(made + 1), times);
  } else if (made > 0) {
    lnScale += multiplyMade(values, from, table.needed(made), times);
  }
  lnScale += multiplySpeed(values, from, group.fastestMps, 1, table.speedMps);
  lnScale += multiplySpeed(values, from, group.peakMps, PEAK_FACTOR, table.peakMps);
  if (group.lastMps.count > 0)
    lnScale += multiplySpeed(values, from, group.lastMps, LAST_FACTOR, table.lastMps(made));
  if (group.reserve.count > 0) multiplyReserve(values, from, group, table.ladder());
  if (group.topShare > 0) multiplyTop(values, from, group, table.ladder());
  if (group.stopped.count > 0) {
    const needed = table.needed(made + 1);
    for (let i = 0; i < values.length; i++) {
      const shortfall = needed - (from + i * STEP_LN);
      values[i]! *= tailed((group.stopped.mean - stopAt(group.model, shortfall)) / STOP_SD_S);
    }
  }
  return lnScale;
}

/** Multiplies in the chance that all reps go, over the chance that strength in plenty has; returns the ln of that. */
function multiplyMade(values: Float64Array, from: number, enough: number, times: number): number {
  const reach = Math.min(values.length, Math.ceil((enough + SPAN_LN - from) / STEP_LN));
  for (let i = 0; i < reach; i++)
    values[i]! *= power((WILD_SHARE / 2 + chanceAbove(from + i * STEP_LN - enough)) / IN_PLENTY, times);
  return times * Math.log(IN_PLENTY);
}

/** Multiplies in the chance that just these reps go: `enough` is needed for them, `more` for one more. */
function multiplyMissed(
  values: Float64Array,
  from: number,
  enough: number,
  more: number,
  times: number,
): void {
  for (let i = 0; i < values.length; i++) {
    const surplus = from + i * STEP_LN;
    values[i]! *= power(WILD_SHARE / 2 + chanceAbove(surplus - enough) - chanceAbove(surplus - more), times);
  }
}

function power(chance: number, times: number): number {
  return times === 1 ? chance : times === 2 ? chance * chance : chance * chance * chance;
}

function multiplySpeed(
  values: Float64Array,
  from: number,
  { mean, count }: Told,
  factor: number,
  speedMps: Float64Array,
): number {
  if (count === 0) return 0;
  const sd = factor * speedSdMps(count);
  for (let i = 0; i < values.length; i++)
    values[i]! *= tailed((mean - atSurplus(speedMps, from + i * STEP_LN)) / sd);
  return -Math.log(sd);
}

function multiplyReserve(
  values: Float64Array,
  from: number,
  { made, reserve }: EffortGroup,
  ladder: readonly number[],
): void {
  const said = made + reserve.mean + RESERVE_UNSAID_REPS;
  for (let i = 0; i < values.length; i++) {
    const possible = repsPossible(ladder, from + i * STEP_LN);
    const sd = reserveSd(possible - made, reserve.count);
    values[i]! *= tailed((said - possible) / sd) / sd;
  }
}

function multiplyTop(
  values: Float64Array,
  from: number,
  { made, topShare }: EffortGroup,
  ladder: readonly number[],
): void {
  const sd = LEFT_SD_REPS / Math.sqrt(topShare);
  for (let i = 0; i < values.length; i++)
    values[i]! *= tailed((made + LEFT_REPS - repsPossible(ladder, from + i * STEP_LN)) / sd);
}

/** Student's density with TAIL = 4 degrees of freedom, but for a constant factor: (1 + z^2/4)^(-5/2). */
function tailed(z: number): number {
  const q = 1 / (1 + (z * z) / TAIL);
  return q * q * Math.sqrt(q);
}

/** Chance that ln strength `surplus` above what is needed is enough, slips included, wild entries not: read from a table, to 1e-6. */
function chanceAbove(surplus: number): number {
  if (surplus <= -SPAN_LN) return 0;
  if (surplus >= SPAN_LN) return ABOVE[ABOVE.length - 1]!;
  const x = (surplus + SPAN_LN) * PER_LN;
  const i = Math.floor(x);
  const low = ABOVE[i]!;
  return low + (x - i) * (ABOVE[i + 1]! - low);
}
const SPAN_LN = 8 * SLIP_SD_LN;
const PER_LN = 128 / SET_SD_LN;
const ABOVE = Float64Array.from({ length: Math.ceil(2 * SPAN_LN * PER_LN) + 2 }, (_, i) => {
  const surplus = i / PER_LN - SPAN_LN;
  return (
    (1 - SLIP_SHARE - WILD_SHARE) * normalCdf(surplus / SET_SD_LN) +
    SLIP_SHARE * normalCdf(surplus / SLIP_SD_LN)
  );
});
/** Chance of a made entry where strength is in plenty. */
const IN_PLENTY = WILD_SHARE / 2 + ABOVE[ABOVE.length - 1]!;

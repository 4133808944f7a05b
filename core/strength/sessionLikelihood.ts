import { turningRoom } from '../numeric/room.ts';
import { multiplyMade, multiplyMissed } from './chanceMade.ts';
import { lackedRoots, placeOfLacking, slipChances, slipRoots } from './lackedByMiss.ts';
import { STEP_LN } from './lattice.ts';
import {
  LAST_FACTOR,
  oneReserveSd,
  PEAK_FACTOR,
  RESERVE_UNSAID_REPS,
  STOP_SD_S,
  speedSdMps,
  TAIL,
} from './noise.ts';
import type { Parameters } from './parameters.ts';
import type { ReadModel } from './readGroup.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import type { EffortGroup, Session, Told } from './sessions.ts';
import type { SetModel } from './setModel.ts';
import { isOfSeveral, KEPT_REPS, KEPT_SD_LN, LEFT_REPS, LEFT_SD_REPS } from './workUps.ts';

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
  const tails = tailScratch(count).fill(1);
  let lnScale = 0;
  for (const group of session.groups) {
    const { straightLn, table } = read(group.model);
    const offset =
      straightLn +
      group.carriedLn * Math.exp(parameters.lnTiring) -
      (group.equipment === null ? 0 : parameters[group.equipment]) -
      (group.platform ? parameters.platform : 0);
    lnScale += multiplyIn(values, tails, first * STEP_LN - offset, group, table);
  }
  for (let i = 0; i < count; i++) values[i]! /= tails[i]! * tails[i]! * Math.sqrt(tails[i]!);
  return { values, lnScale };
}

const scratch = turningRoom(1);
/** Products of the bases of Student's densities: all are raised to their power at once, since roots are dear. */
const tailScratch = turningRoom(1);
const possibleReps = turningRoom(1);

/** Multiplies one group's likelihood in, the first value at surplus `from`; returns the ln of what does not depend on strength. */
function multiplyIn(
  values: Float64Array,
  tails: Float64Array,
  from: number,
  group: EffortGroup,
  table: ReadTable,
): number {
  const { made, missed } = group;
  const times = Math.min(group.count, MOST_ALIKE);
  let lnScale = 0;
  if (missed) {
    const enough = made > 0 ? table.neededFor(made) : Number.NEGATIVE_INFINITY;
    multiplyMissed(values, from, enough, table.neededFor(made + 1), times);
  } else if (made > 0) {
    lnScale += multiplyMade(values, from, table.neededFor(made), times);
  }
  const { fastestMps, peakMps, lastMps } = group;
  if (fastestMps.count > 0) lnScale += multiplySpeed(tails, from, fastestMps, 1, table.speedMps);
  if (peakMps.count > 0) lnScale += multiplySpeed(tails, from, peakMps, PEAK_FACTOR, table.peakMps());
  if (lastMps.count > 0) lnScale += multiplySpeed(tails, from, lastMps, LAST_FACTOR, table.lastMps(made));
  if (group.reserve.count > 0) multiplyReserve(values, tails, from, group, table);
  if (group.topShare > 0 && isOfSeveral(group)) multiplyKept(tails, from, group, table);
  else if (group.topShare > 0) multiplyTop(tails, from, group, table);
  if (group.stopped.count > 0) multiplyStop(values, from, group, table);
  return lnScale;
}

function multiplySpeed(
  tails: Float64Array,
  from: number,
  { mean, count }: Told,
  factor: number,
  speedMps: Float64Array,
): number {
  const sd = factor * speedSdMps(count);
  const perSd = 1 / sd;
  for (let i = 0; i < tails.length; i++)
    tails[i]! *= tailBase((mean - atSurplus(speedMps, from + i * STEP_LN)) * perSd);
  return -Math.log(sd);
}

function multiplyReserve(
  values: Float64Array,
  tails: Float64Array,
  from: number,
  { made, reserve }: EffortGroup,
  table: ReadTable,
): void {
  const said = made + reserve.mean + RESERVE_UNSAID_REPS;
  const possible = table.repsAlong(from, STEP_LN, possibleReps(values.length));
  const root = Math.sqrt(reserve.count);
  for (let i = 0; i < values.length; i++) {
    const perSd = root / oneReserveSd(possible[i]! - made);
    tails[i]! *= tailBase((said - possible[i]!) * perSd);
    values[i]! *= perSd;
  }
}

function multiplyTop(
  tails: Float64Array,
  from: number,
  { made, topShare }: EffortGroup,
  table: ReadTable,
): void {
  const perSd = Math.sqrt(topShare) / LEFT_SD_REPS;
  const possible = table.repsAlong(from, STEP_LN, possibleReps(tails.length));
  for (let i = 0; i < tails.length; i++) tails[i]! *= tailBase((made + LEFT_REPS - possible[i]!) * perSd);
}

function multiplyKept(
  tails: Float64Array,
  from: number,
  { made, topShare }: EffortGroup,
  table: ReadTable,
): void {
  const left = from - table.neededFor(made + KEPT_REPS);
  const perSd = Math.sqrt(topShare) / KEPT_SD_LN;
  for (let i = 0; i < tails.length; i++) tails[i]! *= tailBase((left + i * STEP_LN) * perSd);
}

function multiplyStop(
  values: Float64Array,
  from: number,
  { made, stopped, stopShare }: EffortGroup,
  table: ReadTable,
): void {
  const needed = table.neededFor(made + 1);
  const perSd = Math.sqrt(stopShare) / STOP_SD_S;
  for (let i = 0; i < values.length; i++) {
    const at = placeOfLacking(needed - (from + i * STEP_LN));
    const slip = slipChances[at]!;
    let told = tailed((stopped.mean - table.stopAt(lackedRoots[at]!)) * perSd);
    if (slip > 0) told += slip * (tailed((stopped.mean - table.stopAt(slipRoots[at]!)) * perSd) - told);
    values[i]! *= told;
  }
}

/** Student's density with TAIL = 4 degrees of freedom, but for a constant factor: (1 + z^2/4)^(-5/2). */
function tailed(z: number): number {
  const q = 1 / tailBase(z);
  return q * q * Math.sqrt(q);
}

function tailBase(z: number): number {
  return 1 + (z * z) / TAIL;
}

import { turningRoom } from '../numeric/room.ts';
import { multiplyMade, multiplyMissed } from './chanceMade.ts';
import { lackedRoots, rowOfLacking, slipChances, slipRoots } from './lackedByMiss.ts';
import { STEP_LN } from './lattice.ts';
import { STOP_SD_S, TAIL } from './noise.ts';
import {
  answerSd,
  type KeptSeen,
  keptSeen,
  type RepsSeen,
  saidReps,
  speedSeenSd,
  speedsSeen,
  standsForLn,
  timesCounted,
  topReps,
} from './observation.ts';
import type { Parameters } from './parameters.ts';
import type { ReadModel } from './readGroup.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import type { EffortGroup, Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

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
    const from = first * STEP_LN - standsForLn(group, straightLn, parameters);
    lnScale += multiplyIn(values, tails, from, group, table);
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
  const times = timesCounted(group);
  let lnScale = 0;
  if (missed) {
    const enough = made > 0 ? table.neededFor(made) : Number.NEGATIVE_INFINITY;
    multiplyMissed(values, from, enough, table.neededFor(made + 1), times);
  } else if (made > 0) {
    lnScale += multiplyMade(values, from, table.neededFor(made), times);
  }
  for (const seen of speedsSeen) {
    const { mean, count } = group[seen.told];
    if (count > 0)
      lnScale += multiplySpeed(tails, from, mean, speedSeenSd(seen, count), seen.over(table, made));
  }
  const said = saidReps(group);
  if (said !== null) multiplyReps(values, tails, from, made, said, table);
  const top = topReps(group);
  if (top !== null) multiplyReps(values, tails, from, made, top, table);
  const kept = keptSeen(group);
  if (kept !== null) multiplyKept(tails, from, kept, table);
  if (group.stopped.count > 0) multiplyStop(values, from, group, table);
  return lnScale;
}

function multiplySpeed(
  tails: Float64Array,
  from: number,
  readMps: number,
  sdMps: number,
  speedMps: Float64Array,
): number {
  const perSd = 1 / sdMps;
  for (let i = 0; i < tails.length; i++)
    tails[i]! *= tailBase((readMps - atSurplus(speedMps, from + i * STEP_LN)) * perSd);
  return -Math.log(sdMps);
}

function multiplyReps(
  values: Float64Array,
  tails: Float64Array,
  from: number,
  made: number,
  seen: RepsSeen,
  table: ReadTable,
): void {
  const { reps } = seen;
  const possible = table.repsAlong(from, STEP_LN, possibleReps(values.length));
  const root = Math.sqrt(seen.worth);
  if (seen.sdPerRepLeft === 0) {
    const perSd = root / seen.sdReps;
    for (let i = 0; i < tails.length; i++) tails[i]! *= tailBase((reps - possible[i]!) * perSd);
    return;
  }
  for (let i = 0; i < values.length; i++) {
    const perSd = root / answerSd(seen, possible[i]! - made);
    tails[i]! *= tailBase((reps - possible[i]!) * perSd);
    values[i]! *= perSd;
  }
}

function multiplyKept(
  tails: Float64Array,
  from: number,
  { reps, worth, sdLn }: KeptSeen,
  table: ReadTable,
): void {
  const left = from - table.neededFor(reps);
  const perSd = Math.sqrt(worth) / sdLn;
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
    const at = rowOfLacking(needed - (from + i * STEP_LN));
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

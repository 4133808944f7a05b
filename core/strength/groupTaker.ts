import { normalQuantile } from '../numeric/normal.ts';
import type { NormalState } from './NormalState.ts';
import {
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_SD_PER_REP,
  RESERVE_UNSAID_REPS,
  reserveSd,
  speedSdMps,
} from './noise.ts';
import type { ParameterName, Parameters } from './parameters.ts';
import { DIFFERENCE, type ReadingBeside } from './readingsBeside.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import { MOST_ALIKE } from './sessionLikelihood.ts';
import type { EffortGroup, Told } from './sessions.ts';
import { isOfSeveral, KEPT_REPS, KEPT_SD_LN, LEFT_REPS, LEFT_SD_REPS } from './workUps.ts';

/** Takes what a group tells into the state; returns how much it surprised, in signed standard deviations. */
export type Taking = (group: EffortGroup, reading: ReadingBeside) => number[];
/** What a table tells by the surplus of strength. */
type Quantity = (table: ReadTable, surplus: number) => number;

/**
 * Takes groups of sets into a state of (strength, the day's form, the parameters `names`), linearised about `around` and the
 * strength believed by then.
 */
export function groupTaker(
  state: NormalState,
  names: readonly ParameterName[],
  around: Parameters,
): { takeOutcome: Taking; takeReadings: Taking } {
  const { mean, slope: h } = state;
  const tiringAt = names.indexOf('lnTiring');

  const setOff = (name: ParameterName | null, value: number) => {
    const k = name === null ? -1 : names.indexOf(name);
    if (k >= 0) h[k + 2] = value;
    return k >= 0 ? mean[k + 2]! : 0;
  };
  const surplusOfMean = (group: EffortGroup, reading: ReadingBeside) => {
    h.fill(0);
    h[0] = 1;
    h[1] = 1;
    let level = mean[0]! + mean[1]! - reading.now.straightLn - group.carriedLn;
    for (let k = 0; k < names.length; k++) {
      h[k + 2] = -reading.straightSlope[k]!;
      level -= reading.straightSlope[k]! * (mean[k + 2]! - around[names[k]!]);
    }
    // What was carried over grows with tiring like any other loss.
    if (tiringAt >= 0) {
      h[tiringAt + 2] = -group.carriedLn;
      level -= group.carriedLn * (mean[tiringAt + 2]! - around.lnTiring);
    }
    level += setOff(group.equipment, 1);
    level += group.platform ? setOff('platform', 1) : 0;
    return level;
  };
  /** Surplus left after what just these reps need; what they need depends on the shape too. */
  const surplusBeyond = (group: EffortGroup, reading: ReadingBeside, reps: number) => {
    const needed = reading.now.table.neededFor(reps);
    let level = surplusOfMean(group, reading) - needed;
    for (const k of reading.bearing) {
      const slope = (reading.beside[k]!.table.neededFor(reps) - needed) / DIFFERENCE;
      h[k + 2]! -= slope;
      level -= slope * (mean[k + 2]! - around[names[k]!]);
    }
    return level;
  };
  /** A quantity that tables tell by surplus was found to be `value`, within `sd`; returns how much that surprised. */
  const found = (
    group: EffortGroup,
    reading: ReadingBeside,
    value: number,
    sd: number,
    quantity: Quantity,
  ) => {
    const { table } = reading.now;
    const base = Math.max(surplusOfMean(group, reading), 0.002);
    const change = quantity(table, base + 0.01) - quantity(table, Math.max(0, base - 0.01));
    const slope = change / (0.01 + Math.min(0.01, base));
    for (let i = 0; i < h.length; i++) h[i]! *= slope;
    let predicted = quantity(table, base);
    reading.beside.forEach((moved, k) => {
      const ownSlope = (quantity(moved.table, base) - quantity(table, base)) / DIFFERENCE;
      h[k + 2]! += ownSlope;
      predicted += ownSlope * (mean[k + 2]! - around[names[k]!]);
    });
    return state.takeValue(value - predicted, sd);
  };

  return {
    /** What was made and missed of a group. */
    takeOutcome(group, reading) {
      const { made, missed } = group;
      const times = Math.min(group.count, MOST_ALIKE);
      const surprises: number[] = [];
      for (let i = 0; i < (made > 0 ? times : 0); i++) {
        const likelihood = state.takeSide(1, surplusBeyond(group, reading, made));
        if (i === 0) surprises.push(twoSided(likelihood));
      }
      for (let i = 0; i < (missed ? times : 0); i++) {
        const likelihood = state.takeSide(-1, surplusBeyond(group, reading, made + 1));
        if (i === 0) surprises.push(-twoSided(likelihood));
      }
      return surprises;
    },
    /** How fast a group went and what was left. */
    takeReadings(group, reading) {
      const surprises: number[] = [];
      const take = (value: number, sd: number, quantity: Quantity) => {
        surprises.push(found(group, reading, value, sd, quantity));
      };
      const speed = (told: Told, factor: number, quantity: Quantity) => {
        if (told.count > 0) take(told.mean, factor * speedSdMps(told.count), quantity);
      };
      speed(group.fastestMps, 1, ({ speedMps }, u) => atSurplus(speedMps, u));
      speed(group.peakMps, PEAK_FACTOR, (table, u) => atSurplus(table.peakMps(), u));
      speed(group.lastMps, LAST_FACTOR, (table, u) =>
        atSurplus(table.speedMps, table.surplusAtRep(u, group.made)),
      );
      const { count, mean: left } = group.reserve;
      if (count > 0) {
        const expected = possibleReps(reading.now.table, surplusOfMean(group, reading));
        const sd = reserveSd(expected - group.made, count);
        // The fewer reps are left the surer the answer, which makes fewer of them the likelier.
        const said = group.made + left + RESERVE_UNSAID_REPS - (RESERVE_SD_PER_REP * sd) / Math.sqrt(count);
        take(said, sd, possibleReps);
      }
      if (group.topShare > 0 && isOfSeveral(group)) {
        const surplus = surplusBeyond(group, reading, group.made + KEPT_REPS);
        surprises.push(state.takeValue(-surplus, KEPT_SD_LN / Math.sqrt(group.topShare)));
      } else if (group.topShare > 0)
        take(group.made + LEFT_REPS, LEFT_SD_REPS / Math.sqrt(group.topShare), possibleReps);
      return surprises;
    },
  };
}

/** A likelihood of 1 surprises nobody; one of 0.05 is as surprising as two standard deviations. */
function twoSided(likelihood: number): number {
  return -normalQuantile(Math.min(0.5, Math.max(1e-12, likelihood / 2)));
}

function possibleReps(table: ReadTable, surplus: number): number {
  return table.repsPossible(surplus);
}

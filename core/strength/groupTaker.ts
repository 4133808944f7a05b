import { normalQuantile } from '../numeric/normal.ts';
import type { NormalState } from './NormalState.ts';
import {
  answerSd,
  keptSeen,
  saidReps,
  speedSeenSd,
  speedsSeen,
  timesCounted,
  topReps,
} from './observation.ts';
import type { ParameterName, Parameters } from './parameters.ts';
import { DIFFERENCE, type ReadingBeside } from './readingsBeside.ts';
import type { ReadTable } from './readTable.ts';
import type { EffortGroup } from './sessions.ts';

/** Takes what a group tells into the state; returns how much it surprised, in signed standard deviations. */
export type Taking = (group: EffortGroup, tables: ReadingBeside) => number[];
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

  /** What a parameter adds that stands in the state by itself. */
  const added = (name: ParameterName | null) => {
    const k = names.findIndex((one) => one === name);
    if (k < 0) return 0;
    h[k + 2] = 1;
    return mean[k + 2]!;
  };
  /** `standsForLn` taken off the strength believed, as a straight line in the parameters about `around`. */
  const surplusOfMean = (group: EffortGroup, tables: ReadingBeside) => {
    h.fill(0);
    h[0] = 1;
    h[1] = 1;
    let level = mean[0]! + mean[1]! - tables.now.straightLn - group.carriedLn;
    for (let k = 0; k < names.length; k++) {
      h[k + 2] = -tables.straightSlope[k]!;
      level -= tables.straightSlope[k]! * (mean[k + 2]! - around[names[k]!]);
    }
    // What was carried over grows with tiring like any other loss.
    if (tiringAt >= 0) {
      h[tiringAt + 2]! -= group.carriedLn;
      level -= group.carriedLn * (mean[tiringAt + 2]! - around.lnTiring);
    }
    return level + added(group.equipment) + (group.platform ? added('platform') : 0);
  };
  /** Surplus left after what just these reps need; what they need depends on the shape too. */
  const surplusBeyond = (group: EffortGroup, tables: ReadingBeside, reps: number) => {
    const needed = tables.now.table.neededFor(reps);
    let level = surplusOfMean(group, tables) - needed;
    for (const k of tables.bearing) {
      const slope = (tables.beside[k]!.table.neededFor(reps) - needed) / DIFFERENCE;
      h[k + 2]! -= slope;
      level -= slope * (mean[k + 2]! - around[names[k]!]);
    }
    return level;
  };
  /** A quantity that tables tell by surplus was found to be `value`, within `sd`; returns how much that surprised. */
  const found = (
    group: EffortGroup,
    tables: ReadingBeside,
    value: number,
    sd: number,
    quantity: Quantity,
  ) => {
    const { table } = tables.now;
    const base = Math.max(surplusOfMean(group, tables), 0.002);
    const change = quantity(table, base + 0.01) - quantity(table, Math.max(0, base - 0.01));
    const slope = change / (0.01 + Math.min(0.01, base));
    for (let i = 0; i < h.length; i++) h[i]! *= slope;
    let predicted = quantity(table, base);
    tables.beside.forEach((moved, k) => {
      const ownSlope = (quantity(moved.table, base) - quantity(table, base)) / DIFFERENCE;
      h[k + 2]! += ownSlope;
      predicted += ownSlope * (mean[k + 2]! - around[names[k]!]);
    });
    return state.takeValue(value - predicted, sd);
  };

  return {
    /** What was made and missed of a group. */
    takeOutcome(group, tables) {
      const { made, missed } = group;
      const times = timesCounted(group);
      const surprises: number[] = [];
      for (let i = 0; i < (made > 0 ? times : 0); i++) {
        const likelihood = state.takeSide(1, surplusBeyond(group, tables, made));
        if (i === 0) surprises.push(twoSided(likelihood));
      }
      for (let i = 0; i < (missed ? times : 0); i++) {
        const likelihood = state.takeSide(-1, surplusBeyond(group, tables, made + 1));
        if (i === 0) surprises.push(-twoSided(likelihood));
      }
      return surprises;
    },
    /** How fast a group went and what was left. */
    takeReadings(group, tables) {
      const surprises: number[] = [];
      const take = (value: number, sd: number, quantity: Quantity) => {
        surprises.push(found(group, tables, value, sd, quantity));
      };
      const { made } = group;
      for (const seen of speedsSeen) {
        const { mean: readMps, count } = group[seen.told];
        if (count > 0) take(readMps, speedSeenSd(seen, count), (table, u) => seen.at(table, made, u));
      }
      for (const seen of [saidReps(group), topReps(group)]) {
        if (seen === null) continue;
        const root = Math.sqrt(seen.worth);
        const expected = possibleReps(tables.now.table, surplusOfMean(group, tables));
        const sd = answerSd(seen, expected - made) / root;
        // Where fewer reps left make an answer surer, fewer of them are the likelier.
        take(seen.reps - (seen.sdPerRepLeft * sd) / root, sd, possibleReps);
      }
      const kept = keptSeen(group);
      if (kept !== null) {
        const surplus = surplusBeyond(group, tables, kept.reps);
        surprises.push(state.takeValue(-surplus, kept.sdLn / Math.sqrt(kept.worth)));
      }
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

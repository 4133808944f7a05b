import { type Fatigue, lostLn, RESTED, recovered, tired } from './fatigue.ts';
import { repCost } from './repCost.ts';
import type { RepTable } from './repTable.ts';
import type { Tiring } from './Tiring.ts';

/** Sets of one bar, each followed by the same rest. */
export interface SessionBlock {
  table: RepTable;
  sets: number;
  reps: number;
  restS: number;
}

/** One rep as far as strength goes. */
export interface Step {
  /** ln of the strength at its start over what just makes it: the rep is made from 0 on. */
  surplusLn: number;
  /** Strength lost up to its end. */
  after: Fatigue;
}

/** The reps of a set without rest between them, to the first miss, which is the last one listed. */
export function walkSet(
  table: RepTable,
  reps: number,
  tiring: Tiring,
  before: Fatigue,
  strongerLn = 0,
): Step[] {
  const steps: Step[] = [];
  let fatigue = before;
  let surplusLn = table.restedLn + strongerLn - lostLn(before);
  while (steps.length < reps) {
    const effortS = table.effortS(surplusLn);
    fatigue = tired(fatigue, effortS, tiring);
    steps.push({ surplusLn, after: fatigue });
    if (surplusLn < 0) break;
    // The bend is a matter of this set alone: what is carried on to the next one is the effort.
    surplusLn -= repCost(steps.length, tiring.bend) * tiring.perSecond * effortS;
  }
  return steps;
}

/**
 * Every set of every block from rested, for a lifter `strongerLn` stronger than thought. A block ends with the set in
 * which a rep is missed; tiredness is carried on.
 */
export function walkSession(blocks: readonly SessionBlock[], tiring: Tiring, strongerLn: number): Step[][][] {
  let fatigue = RESTED;
  return blocks.map(({ table, sets, reps, restS }) => {
    const done: Step[][] = [];
    while (done.length < sets) {
      const steps = walkSet(table, reps, tiring, fatigue, strongerLn);
      const last = steps[steps.length - 1]!;
      fatigue = recovered(last.after, restS, tiring);
      done.push(steps);
      if (last.surplusLn < 0) break;
    }
    return done;
  });
}

import { RESTED } from './fatigue.ts';
import { MOST_REPS } from './repsPossible.ts';
import type { RepTable } from './repTable.ts';
import type { Tiring } from './Tiring.ts';
import { walkSet } from './walkSession.ts';

/**
 * Reps of a rested set without rest between them, with the part of the next one that was still there: 6.4 is six reps made
 * and the seventh missed by a little more than half of what a rep costs. Unlike a count it moves with every change of tiring.
 */
export function repsAndPart(table: RepTable, tiring: Tiring): number {
  const surpluses = walkSet(table, MOST_REPS, tiring, RESTED).map(({ surplusLn }) => surplusLn);
  const missed = surpluses[surpluses.length - 1]!;
  if (missed >= 0) return MOST_REPS;
  const made = surpluses.length - 1;
  if (made === 0) return 0;
  const last = surpluses[made - 1]!;
  return made + last / (last - missed);
}

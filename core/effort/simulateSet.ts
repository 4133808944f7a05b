import { clearStrengthN } from '../rep/expectedSpeed.ts';
import { repOf } from '../rep/simulateRep.ts';
import { type Fatigue, RESTED } from './fatigue.ts';
import type { RepTable } from './repTable.ts';
import type { Tiring } from './Tiring.ts';
import { walkSet } from './walkSession.ts';

/** One rep of a set. */
export interface SetRep {
  made: boolean;
  /** Until lockout, or until the bar stood still. */
  durationS: number;
  meanSpeedMps: number;
  /** Where a miss stopped, on the lifter's own full range. */
  stoppedAtS: number | null;
  /** Strength lost up to its end. */
  after: Fatigue;
}

/**
 * A set of up to `reps` reps without rest between them; it ends at the first miss. Strength is lost with the effort of
 * each rep (repEffort.ts), on top of what was lost `before`.
 */
export function simulateSet(
  table: RepTable,
  reps: number,
  tiring: Tiring,
  before: Fatigue = RESTED,
): SetRep[] {
  return walkSet(table, reps, tiring, before).map(({ surplusLn, after }) => ({
    ...repAtSurplus(table, surplusLn),
    after,
  }));
}

/** A rep of the table's load by a lifter so far above what just makes it: made from 0 on, as in a walk through a session. */
export function repAtSurplus(table: RepTable, surplusLn: number): Omit<SetRep, 'after'> {
  const { compiled, capability, limitN } = table;
  const { made, durationS, meanSpeedMps, stoppedAt } = repOf(
    compiled,
    { ...capability, strengthN: clearStrengthN(limitN, surplusLn) },
    0,
  );
  return { made, durationS, meanSpeedMps, stoppedAtS: stoppedAt?.s ?? null };
}

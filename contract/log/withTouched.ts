import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { byDayAndOrder } from './byDayAndOrder.ts';

/** A part of the log, as a reader asks for it; what is left out does not narrow. Days are local dates, both ends included. */
export interface PartOfLog {
  lifterId?: string;
  lift?: string;
  dayId?: string;
  from?: string;
  to?: string;
}

/** A part of the log as it now is, by day and order, from how it was and the sets that were touched since; the same list where none of these is in it. */
export function withTouched(
  sets: readonly LoggedSet[],
  part: PartOfLog,
  touched: readonly LoggedSet[],
): readonly LoggedSet[] {
  const now = new Map(touched.filter((set) => isIn(part, set)).map((set) => [set.id, set]));
  if (now.size === 0) return sets;
  return [...sets.filter(({ id }) => !now.has(id)), ...now.values()].toSorted(byDayAndOrder);
}

function isIn({ lifterId, lift, dayId, from, to }: PartOfLog, set: LoggedSet): boolean {
  return (
    (lifterId === undefined || set.lifterId === lifterId) &&
    (lift === undefined || set.lift === lift) &&
    (dayId === undefined || set.dayId === dayId) &&
    (from === undefined || set.doneOn >= from) &&
    (to === undefined || set.doneOn <= to)
  );
}

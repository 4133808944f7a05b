import type { DayOfLifter, GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { addedWork, type SessionWork, type WorkKnown } from '#contract/season/sessionWork.ts';
import { workOfPlace } from '#reckon/season/workOfPlace.ts';
import type { WeekAhead } from './useWeekAhead.ts';

/** What the groups of days come to for one lifter: as they were worked out, else as `estimates` has them. */
export function workOfDays(
  days: readonly DayOfLifter[],
  ahead: WeekAhead,
  estimates: ReadonlyMap<GroupOfLifter, SessionWork | null>,
): WorkKnown {
  const found = { workedOut: [] as SessionWork[], estimated: [] as SessionWork[] };
  let unknown = 0;
  for (const day of days)
    for (const group of day.groups) {
      const known = ahead.of(day, group);
      const solved = known !== null && 'work' in known ? known.work.place.solved : null;
      const estimate = estimates.get(group) ?? null;
      if (solved !== null) found.workedOut.push(workOfPlace(solved));
      else if (estimate !== null) found.estimated.push(estimate);
      else unknown += 1;
    }
  return {
    work: addedWork([...found.workedOut, ...found.estimated]),
    workedOut: found.workedOut.length,
    estimated: found.estimated.length,
    unknown,
  };
}

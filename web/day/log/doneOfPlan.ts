import { isSameStart } from '#contract/day/isSameStart.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { PlannedSet, PlannedSets } from './plannedSets.ts';

/** What was done of a lifter's planned sets: one place for each of them, and what came on top. */
export interface DoneOfPlan {
  done: readonly (LoggedSet | null)[];
  extra: readonly LoggedSet[];
}

/** Bars that differ by less are the same (kg). */
const sameBarKg = 0.05;

/**
 * Lays logged sets on the planned ones. A set as planned takes its own place; one that was changed takes the first that is
 * left; what finds none came on top. Struck sets do not count.
 */
export function doneOfPlan(work: PlannedSets, logged: readonly LoggedSet[]): DoneOfPlan {
  const counted = logged.filter((set) => set.struckAt === null && belongs(work, set));
  const done: (LoggedSet | null)[] = work.sets.map(() => null);
  const put = (set: LoggedSet, fits: (planned: PlannedSet) => boolean): boolean => {
    const at = work.sets.findIndex((planned, i) => done[i] === null && fits(planned));
    if (at >= 0) done[at] = set;
    return at >= 0;
  };
  const changed = counted.filter((set) => !put(set, (planned) => asPlanned(planned, set)));
  const extra = changed.filter((set) => !put(set, () => true));
  return { done, extra };
}

function belongs({ lift, sets, onlyOfLift }: PlannedSets, set: LoggedSet): boolean {
  return (
    set.lift === lift && (onlyOfLift || sets.some(({ setup }) => isSameStart(setup.start, set.setup.start)))
  );
}

function asPlanned(planned: PlannedSet, set: LoggedSet): boolean {
  return planned.reps === set.reps && Math.abs(planned.setup.barKg - set.setup.barKg) < sameBarKg;
}

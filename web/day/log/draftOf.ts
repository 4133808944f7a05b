import { type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';
import type { SetDraft } from '#web/setup/setDraft.ts';
import type { PlannedSet } from './plannedSets.ts';
import type { PlaceLog } from './useDayLog.ts';

/** The set that is about to be done: as planned or, beyond the plan, as the last one; dressed as in the set before. */
export function draftOf(of: {
  log: PlaceLog;
  planned: PlannedSet | null;
  dayId: string;
  lifterId: string;
}): SetDraft {
  const { log } = of;
  const onRecord = [...log.done, ...log.extra].filter((set): set is LoggedSet => set !== null);
  const latest = onRecord.reduce<LoggedSet | null>(
    (last, set) => (last === null || set.order > last.order ? set : last),
    null,
  );
  const { setup, reps } = of.planned ?? latest ?? log.work.sets.at(-1)!;
  return {
    lifterId: of.lifterId,
    doneOn: log.doneOn,
    lift: log.work.lift,
    equipment: latest?.equipment ?? log.work.equipment,
    setup,
    reps,
    made: reps,
    ...nothingSeen,
    bodyMassKg: latest?.bodyMassKg ?? null,
    platform: false,
    place: '',
    dayId: of.dayId,
    planNumber: log.planNumber,
    note: '',
    order: null,
  };
}

import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { Day } from '#contract/records/day.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { useSets } from '#web/api/useSets.ts';
import { localToday } from '#web/parts/localToday.ts';
import { type DoneOfPlan, doneOfPlan } from './doneOfPlan.ts';
import { type PlannedSets, plannedSets } from './plannedSets.ts';

/** What a lifter was given in a group and what of it is on record. */
export interface PlaceLog extends DoneOfPlan {
  work: PlannedSets;
  doneOn: string;
  /** The number of the day's plan that is gone by. */
  planNumber: number;
}

/** The day's part of the log by group and lifter; null of a lifter for whom nothing was worked out. */
export function useDayLog(day: Day, prescription: SignedPrescription | null) {
  const { data } = useSets({ dayId: day.id });
  const today = localToday(useClubSettings().timeZone);
  const plan = prescription?.document ?? null;
  const planNumber = prescription?.number ?? 0;
  // A day that is trained before its date was done today.
  const doneOn = day.date > today ? today : day.date;
  return (groupId: string, lifterId: string): PlaceLog | null => {
    const work = plan === null ? null : plannedSets(plan, groupId, lifterId);
    if (work === null) return null;
    return { work, doneOn, planNumber, ...doneOfPlan(work, ofLifter(data?.sets ?? [], lifterId)) };
  };
}

function ofLifter(sets: readonly LoggedSet[], lifterId: string): LoggedSet[] {
  return sets.filter((set) => set.lifterId === lifterId);
}

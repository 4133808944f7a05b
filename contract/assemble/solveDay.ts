import type { DayPlan } from '#contract/dayPlan.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { gravityOf } from './gravityOf.ts';
import { planBasis } from './planBasis.ts';
import { solveGroup } from './solveGroup.ts';

/** Works a training day out: groups run one after another, each with the whole stock of the club. */
export function solveDay(records: ClubRecords, day: RecordOf<'day'>): DayPlan {
  const groups = day.groups.map((group) => solveGroup(records, day, group));
  return {
    dayId: day.id,
    date: day.date,
    gravityMps2: gravityOf(records),
    basis: planBasis(records, day),
    oneSetPull: day.oneSetPull,
    groups,
  };
}

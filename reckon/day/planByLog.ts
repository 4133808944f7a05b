import type { DayPlan, PlanPlace } from '#contract/day/dayPlan.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { assembleGroup } from './assembleGroup.ts';
import { describePlace } from './describePlace.ts';
import { fixedByCoach } from './fixedByCoach.ts';
import { lacksLog } from './lacksLog.ts';

/**
 * A plan that was made before the log of some lifters was worked out, told anew by what their estimates say of the same bars
 * and gear, to be kept under a number of its own; null where there is nothing to add. `number` is the plan's own. The records must
 * be those that it rests on (`planBasis`).
 */
export function planByLog(
  records: ClubRecords,
  day: RecordOf<'day'>,
  plan: DayPlan,
  number: number,
  estimates: readonly StrengthEstimate[],
): DayPlan | null {
  const groups = plan.groups.map((planned) => {
    const group = day.groups.find(({ id }) => id === planned.groupId);
    if (group === undefined || !planned.places.some(lacksLog)) return planned;
    const { found, racks } = assembleGroup(records, day.date, group, estimates);
    const places = planned.places.map((seat): PlanPlace => {
      const one = found.find(({ place }) => place.lifterId === seat.lifterId);
      const rack = racks.find((candidate) => candidate.rack.id === seat.rackId);
      if (!seat.solved || !lacksLog(seat) || !one || !('assembled' in one) || !rack) return seat;
      const { set: hung, barKg, misfit } = seat.solved;
      const { set } = fixedByCoach({ ...one.place, byCoach: { barKg, ...hung } }, rack.gear);
      if (one.assembled.strength.estimate === null || set === null || set.hookups.includes(-1)) return seat;
      const { place, assembled } = one;
      const setup = { set, barKg, misfit };
      return {
        ...seat,
        solved: describePlace(records, day.date, group, place, assembled, rack, setup, { barIsKept: true }),
      };
    });
    return places.every((place, i) => place === planned.places[i]) ? planned : { ...planned, places };
  });
  return groups.every((group, i) => group === plan.groups[i]) ? null : { ...plan, groups, retells: number };
}

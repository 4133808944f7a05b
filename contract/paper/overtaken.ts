import type { PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import { pointsWords } from '#contract/day/raisedAim.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { goneGear } from './goneGear.ts';

/** How a start is written, in the units of the view. */
type StartWritten = (lift: Lift, start: Start) => string;

/**
 * What overtook one lifter's worked-out bar since, a sentence each: another start or rack than it was worked out for, or gear on it that
 * is out of service on the day. Empty where nothing of that kind did; the gear's readings or the lifter's numbers may still be others.
 */
export function overtaken(
  { lift, racks }: Pick<PlanGroup, 'lift' | 'racks'>,
  planned: PlanPlace,
  now: { group: Pick<Group, 'start'>; place: Place; date: string },
  gear: Pick<ClubRecords, 'bandPair' | 'chainPair'>,
  startWritten: StartWritten,
): string[] {
  const said: string[] = [];
  const start = startOf(now.group, now.place);
  if (startWritten(lift, start) !== startWritten(lift, planned.start))
    said.push(`Worked out for ${startWritten(lift, planned.start)}.`);
  if (now.place.rackId !== planned.rackId) {
    const label = racks.find(({ rackId }) => rackId === planned.rackId)?.label;
    said.push(`Worked out for ${label ?? 'another rack'}.`);
  }
  if (now.place.moreShare !== planned.moreShare)
    said.push(
      planned.moreShare === 0
        ? 'Worked out as the group aims.'
        : `Worked out for ${pointsWords(planned.moreShare)} than the group.`,
    );
  return [...said, ...goneGear(planned, now.date, gear)];
}

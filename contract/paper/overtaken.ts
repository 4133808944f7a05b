import type { PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import { pointsWords } from '#contract/day/raisedAim.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { counted } from '#contract/words/counted.ts';

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
  const { bands, chains } = planned.solved?.set ?? { bands: [], chains: [] };
  for (const { bandPairId, label } of bands) {
    const pair = gear.bandPair.find(({ id }) => id === bandPairId);
    if (pair === undefined || (pair.retiredOn !== null && pair.retiredOn <= now.date))
      said.push(`${label} is out of service: do not hang it.`);
  }
  for (const { chainPairId, label, pairs } of chains) {
    const left = gear.chainPair.find(({ id }) => id === chainPairId)?.pairs ?? 0;
    if (left === 0) said.push(`Chain ${label} is out of service: do not hang it.`);
    else if (left < pairs)
      said.push(`Only ${counted(left, 'pair')} of chain ${label} left: do not count on ${pairs}.`);
  }
  return said;
}

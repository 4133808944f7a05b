import { ageOn } from '#contract/calendar/ageOn.ts';
import { isMinor } from '#contract/calendar/isMinor.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { isGravityAssumed } from '#reckon/gear/gravityOf.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';

const MS_A_YEAR = 365.25 * 86_400_000;

/** What to know about the lifter behind the numbers, and what was assumed: minors first. */
export function placeCautions(
  records: ClubRecords,
  { lifterId }: Pick<Place, 'lifterId'>,
  { heights, strength }: Pick<AssembledPlace, 'heights' | 'strength'>,
  rack: Pick<AssembledRack, 'gear' | 'barAssumedKg'>,
  set: GearSet,
  on: string,
): PlanCaution[] {
  const { bornOn, equipment } = recordById(records, 'lifter', lifterId);
  const cautions: PlanCaution[] = [];
  if (bornOn !== null && isMinor(bornOn, on)) cautions.push({ code: 'minor', age: ageOn(bornOn, on) });
  if (heights.known === 'estimated') cautions.push({ code: 'heightsEstimated' });
  if (heights.known === 'assumed') cautions.push({ code: 'heightsAssumed' });
  const { best, estimate } = strength;
  if (estimate !== null) {
    const { lastSetOn } = estimate;
    if (lastSetOn !== null && Date.parse(on) - Date.parse(lastSetOn) > MS_A_YEAR)
      cautions.push({ code: 'strengthOld', doneOn: lastSetOn, by: 'log' });
  } else if (best === null) cautions.push({ code: 'strengthAssumed' });
  else {
    if (Date.parse(on) - Date.parse(best.doneOn) > MS_A_YEAR)
      cautions.push({ code: 'strengthOld', doneOn: best.doneOn });
    if (best.equipment !== equipment) cautions.push({ code: 'otherEquipment', equipment: best.equipment });
  }
  if (strength.bodyMassKnown === 'assumed')
    cautions.push({ code: 'bodyMassAssumed', massKg: strength.bodyMassKg });
  // A mass is a mass anywhere; a band's force is told as a mass by gravity.
  if (set.hookups.length > 0 && isGravityAssumed(records)) cautions.push({ code: 'gravityAssumed' });
  if (rack.barAssumedKg !== null) cautions.push({ code: 'barAssumed', massKg: rack.barAssumedKg });
  for (const index of set.hookups) {
    const { pairId, rigged, measured } = rack.gear.hookups[index]!;
    const alike = rigged.length === 1 && rigged[0]!.curves.loading.known === 'measured';
    if (alike && measured === null) cautions.push({ code: 'oneSideMeasured', pairId });
  }
  return cautions;
}

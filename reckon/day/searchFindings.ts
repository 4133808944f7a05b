import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import { bindingBounds } from '#core/day/bindingBounds.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import type { SetupRanking } from '#core/day/SetupRanking.ts';
import { whyNoBands } from '#core/day/whyNoBands.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, searchRulesOf, waysToHang } from './assembleRackGear.ts';
import { fixedByCoach } from './fixedByCoach.ts';

/** What the search ran into for one lifter: bounds that hold it back, and why nothing hangs where bands could. */
export function searchFindings(
  records: ClubRecords,
  group: Group,
  place: Place,
  { task }: Pick<AssembledPlace, 'task'>,
  { gear, rack }: Pick<AssembledRack, 'gear' | 'rack'>,
  { set, barKg }: PrescribedSetup,
  ranked: SetupRanking,
  on: string,
): PlanCaution[] {
  const rules = searchRulesOf(records, group);
  const fixed = fixedByCoach(place, gear);
  // Where the rack's gear holds no hookup at all, those that were left out as unfit for anybody tell why.
  const hookups = gear.hookups.length > 0 ? gear.hookups : waysToHang(records, rack, group.lift, on);
  const why =
    fixed.set === null && set.hookups.length === 0
      ? whyNoBands(task, { ...gear, hookups }, rules, barKg, ranked)
      : null;
  return [
    ...bindingBounds(task, gear, fixed, rules).map((found) => ({ code: 'boundBinds' as const, ...found })),
    ...(why === null ? [] : [{ code: 'noBands' as const, why }]),
  ];
}

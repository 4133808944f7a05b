import type { PlanCaution } from '#contract/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import { bindingBounds } from '#core/day/bindingBounds.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { whyNoBands } from '#core/day/whyNoBands.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, searchRulesOf } from './assembleRackGear.ts';
import { fixedByCoach } from './fixedByCoach.ts';

/** What the search ran into for one lifter: bounds that hold it back, and why nothing hangs where bands could. */
export function searchFindings(
  records: ClubRecords,
  group: Group,
  place: Place,
  { task }: Pick<AssembledPlace, 'task'>,
  { gear }: Pick<AssembledRack, 'gear'>,
  { set, barKg }: PrescribedSetup,
): PlanCaution[] {
  const rules = searchRulesOf(records, group);
  const fixed = fixedByCoach(place, gear);
  const why = fixed.set === null && set.hookups.length === 0 ? whyNoBands(task, gear, rules, barKg) : null;
  return [
    ...bindingBounds(task, gear, fixed, rules).map((found) => ({ code: 'boundBinds' as const, ...found })),
    ...(why === null ? [] : [{ code: 'noBands' as const, why }]),
  ];
}

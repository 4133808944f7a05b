import type { PlanCaution } from '#contract/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group } from '#contract/records/day.ts';
import { barsFrom } from '#core/day/rankSetups.ts';
import { type AssembledRack, searchRulesOf } from './assembleRackGear.ts';
import type { PlannedWork } from './plannedWork.ts';

type Outside = Extract<PlanCaution, { code: 'outsideZone' }>;

/** Why the speed that is told lies outside the zone that was asked for; null where it lies within, by the digits shown. */
export function outsideZone(
  records: ClubRecords,
  group: Group,
  { gear }: Pick<AssembledRack, 'gear'>,
  done: PlannedWork,
  asked: { barKg: number; referenceKg: number; byHand: boolean },
): Outside | null {
  const block = done.blocks.findLast(({ expected }) => expected?.zone);
  const zone = block?.expected?.zone;
  if (!block || !zone) return null;
  const mps = Math.round(100 * zone.mps) / 100;
  if (mps >= zone.fromMps && mps <= zone.toMps) return null;
  const { bounds } = searchRulesOf(records, group);
  const allowedKg = barsFrom(bounds.leastBarShare * asked.referenceKg, gear);
  const { loadedKg } = block.loaded;
  const slow = mps < zone.fromMps;
  const why = (): Outside['why'] => {
    if (asked.byHand) return 'byHand';
    if (!slow && done.barKg < asked.barKg) return 'madeLighter';
    if (slow && loadedKg <= allowedKg[0]!) return 'lightestBar';
    if (!slow && loadedKg >= allowedKg.at(-1)!) return 'heaviestBar';
    return 'balance';
  };
  return { code: 'outsideZone', mps: zone.mps, fromMps: zone.fromMps, toMps: zone.toMps, why: why() };
}

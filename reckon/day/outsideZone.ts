import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group } from '#contract/records/day.ts';
import { barsFrom } from '#core/day/bars.ts';
import type { SetupRanking } from '#core/day/SetupRanking.ts';
import { zoneOutlook } from '#core/day/zoneOutlook.ts';
import type { SpeedZone } from '#core/strength/chanceInZone.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, searchRulesOf } from './assembleRackGear.ts';
import type { PlannedWork } from './plannedWork.ts';

type Outside = Extract<PlanCaution, { code: 'outsideZone' }>;

/**
 * Why the speed that is told lies outside the zone that was asked for; null where it lies within, by the digits shown. `ranked`: the
 * sets that this lifter could have.
 */
export function outsideZone(
  records: ClubRecords,
  group: Group,
  { task }: Pick<AssembledPlace, 'task'>,
  { gear }: Pick<AssembledRack, 'gear'>,
  ranked: SetupRanking,
  done: PlannedWork,
  asked: { barKg: number; referenceKg: number; byHand: boolean },
): Outside | null {
  const block = done.blocks.findLast(({ expected }) => expected?.zone);
  const zone = block?.expected?.zone;
  if (!block || !zone) return null;
  const mps = asShown(zone.mps);
  if (isWithin(mps, zone)) return null;
  const { bounds } = searchRulesOf(records, group);
  const allowedKg = barsFrom(bounds.leastBarShare * asked.referenceKg, gear);
  const { loadedKg } = block.loaded;
  const slow = mps < zone.fromMps;
  const isInZoneWithOwnBands = () => {
    const own = ranked.fromBest()()!;
    const outlook = zoneOutlook(task, gear, ranked.sets[own.index]!, own.barKg, 0);
    return outlook !== null && isWithin(asShown(outlook.mps), zone);
  };
  const why = (): Outside['why'] => {
    if (asked.byHand) return 'byHand';
    if (!slow && done.barKg < asked.barKg) return 'madeLighter';
    if (slow && loadedKg <= allowedKg[0]!) return isInZoneWithOwnBands() ? 'sharedBands' : 'lightestBar';
    if (!slow && task.most !== undefined) return 'restricted';
    if (!slow && loadedKg >= allowedKg.at(-1)!) return 'heaviestBar';
    return 'balance';
  };
  return { code: 'outsideZone', mps: zone.mps, fromMps: zone.fromMps, toMps: zone.toMps, why: why() };
}

function asShown(mps: number): number {
  return Math.round(100 * mps) / 100;
}

function isWithin(mps: number, { fromMps, toMps }: SpeedZone): boolean {
  return mps >= fromMps && mps <= toMps;
}

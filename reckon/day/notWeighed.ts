import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { AssembledRack } from './assembleRackGear.ts';

/** What of the bar counts as it is marked, over all steps of one lifter; none where a scale has seen bar and discs, or no bar is set. */
export function notWeighed(
  records: Pick<ClubRecords, 'bar' | 'disc'>,
  { rack }: Pick<AssembledRack, 'rack'>,
  blocks: readonly Pick<PlanBlock, 'perSide'>[],
): PlanCaution[] {
  const bar = records.bar.some(({ id, weighed }) => id === rack.barId && !weighed);
  const byFace = new Set(
    records.disc.flatMap(({ faceMassKg, weighedMassKg }) => (weighedMassKg === null ? [faceMassKg] : [])),
  );
  const discs = blocks.some(({ perSide }) => perSide.some(({ massKg }) => byFace.has(massKg)));
  return bar || discs ? [{ code: 'notWeighed', bar, discs }] : [];
}

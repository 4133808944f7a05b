import type { PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import type { OtherSetup } from '#contract/day/otherSetup.ts';

/** Which bands of a proposal hang at other racks now, in a sentence; null: none. */
export function hungElsewhere(
  group: Pick<PlanGroup, 'places' | 'racks'>,
  { rackId }: Pick<PlanPlace, 'rackId'>,
  { set }: Pick<OtherSetup, 'set'>,
): string | null {
  const away = group.places.filter((place) => place.rackId !== rackId);
  const sentences = set.bands.flatMap(({ bandPairId, label }) => {
    const holders = away.filter((place) =>
      place.solved?.set.bands.some((band) => band.bandPairId === bandPairId),
    );
    const [holder] = holders;
    if (!holder) return [];
    const rack = group.racks.find((candidate) => candidate.rackId === holder.rackId)?.label ?? 'another rack';
    const kept = holders.some(({ solved }) => solved?.byCoach.set);
    return [
      kept
        ? `${label} is set by hand at ${rack}: let the program choose there first.`
        : `${label} hangs at ${rack} now: another one will be found there.`,
    ];
  });
  return sentences.length === 0 ? null : sentences.join(' ');
}

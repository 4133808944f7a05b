import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';

/** Bars and collars that more racks of a group hold than there are of them: all its racks are used at once. */
export function tooFewOfIron(
  { bar, collarPair }: Pick<ClubRecords, 'bar' | 'collarPair'>,
  racks: readonly RecordOf<'rack'>[],
): PlanCaution[] {
  const short = (sort: 'bar' | 'collarPair', gearId: string, has: number): PlanCaution[] => {
    const of = sort === 'bar' ? 'barId' : 'collarPairId';
    const rackIds = racks.filter((rack) => rack[of] === gearId).map(({ id }) => id);
    return rackIds.length > has ? [{ code: 'tooFew', sort, gearId, rackIds, has }] : [];
  };
  return [
    ...bar.flatMap(({ id }) => short('bar', id, 1)),
    ...collarPair.flatMap(({ id, pairs }) => short('collarPair', id, pairs)),
  ];
}

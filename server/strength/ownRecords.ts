import type { FormerRecord } from '#contract/archive/formerRecord.ts';
import { withFormer } from '#contract/archive/withFormer.ts';
import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { isOfLifter, lifterOf } from '#reckon/basis/basisRecords.ts';

/** What one lifter's estimate can rest on, gear that the club no longer has with it: all that travels to a thread. */
export function ownRecords(
  records: ClubRecords,
  lifterId: string,
  former: readonly FormerRecord[],
): ClubRecords {
  const own = kindNames.map((kind) => {
    if (!('estimate' in allKinds[kind].facts.feeds)) return [kind, []];
    const isOwn = (record: { id: string }) => !isOfLifter(kind) || lifterOf(record) === lifterId;
    return [kind, records[kind].filter(isOwn)];
  });
  return withFormer(Object.fromEntries(own) as ClubRecords, former);
}

import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { isOfLifter, lifterOf } from '#reckon/basis/basisRecords.ts';

/** What of the club one lifter's estimate can rest on beside the log: all that travels to a thread. */
export function ownRecords(records: ClubRecords, lifterId: string): ClubRecords {
  const own = kindNames.map((kind) => {
    if (!('estimate' in allKinds[kind].facts.feeds)) return [kind, []];
    const isOwn = (record: { id: string }) => !isOfLifter(kind) || lifterOf(record) === lifterId;
    return [kind, records[kind].filter(isOwn)];
  });
  return Object.fromEntries(own) as ClubRecords;
}

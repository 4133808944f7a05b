import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';

/** A club without a record of any kind, not even of itself. */
export function emptyClub(): ClubRecords {
  return Object.fromEntries(kindNames.map((kind) => [kind, []])) as unknown as ClubRecords;
}

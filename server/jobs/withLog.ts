import { withFormer } from '#contract/archive/withFormer.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { SetFilter } from '#store/logQuery.ts';

/** A part of the log, and the records with the gear that it names and the club no longer has. */
export async function withLog(
  store: ClubStore,
  records: ClubRecords,
  filter: SetFilter,
): Promise<{ records: ClubRecords; log: LoggedSet[] }> {
  const log = await store.loggedSets(filter);
  return { records: withFormer(records, await store.formerGear(log)), log };
}

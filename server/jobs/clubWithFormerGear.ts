import { withFormer } from '#contract/archive/withFormer.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The club and its log, or one lifter's, with the gear that the log names and the club no longer has. */
export async function clubWithFormerGear(
  store: ClubStore,
  filter: { lifterId?: string } = {},
): Promise<{ records: ClubRecords; log: LoggedSet[] }> {
  const [{ records }, log] = await Promise.all([store.records(), store.loggedSets(filter)]);
  return { records: withFormer(records, await store.formerGear(log)), log };
}

import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { withLog } from './withLog.ts';

/** The club and its log, or one lifter's, with the gear that the log names and the club no longer has. */
export async function clubWithFormerGear(
  store: ClubStore,
  filter: { lifterId?: string } = {},
): Promise<{ records: ClubRecords; log: LoggedSet[] }> {
  const { records } = await store.records();
  return withLog(store, records, filter);
}

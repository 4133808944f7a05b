import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The club and its log, or one lifter's, with the gear that the log names and the club no longer has. */
export async function clubWithFormerGear(
  store: ClubStore,
  filter: { lifterId?: string } = {},
): Promise<{ records: ClubRecords; log: LoggedSet[] }> {
  const [{ records }, log] = await Promise.all([store.records(), store.loggedSets(filter)]);
  const former = await store.formerGear(log);
  const whole: ClubRecords = { ...records };
  for (const { kind, record } of former) Object.assign(whole, { [kind]: [...whole[kind], record] });
  return { records: whole, log };
}

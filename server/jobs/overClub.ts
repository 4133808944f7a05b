import { withFormer } from '#contract/archive/withFormer.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/**
 * Gives `use` the club with the gear that its log names, and the log itself, which is not held: it is gone through day by day, as it stands
 * as long as `use` lasts. `count`: about how many sets it has.
 */
export async function overClub<Result>(
  store: ClubStore,
  use: (club: { records: ClubRecords; log: Long<LoggedSet>; count: number }) => Promise<Result>,
): Promise<Result> {
  const { counts } = await store.look();
  return store.snapshot(({ records, sets, former }) =>
    use({ records: withFormer(records, former), log: sets, count: counts.sets }),
  );
}

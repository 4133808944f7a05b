import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** The training days of a week of which sets are logged, by their ids. */
export async function loggedDays(
  store: Pick<ClubStore, 'hasSets'>,
  { day }: Pick<ClubRecords, 'day'>,
  monday: string,
): Promise<ReadonlySet<string>> {
  const logged = new Set<string>();
  for (const { id, date } of day) if (mondayOf(date) === monday && (await store.hasSets(id))) logged.add(id);
  return logged;
}

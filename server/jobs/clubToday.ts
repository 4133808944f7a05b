import { dateAt } from '#contract/dateAt.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Today's date by the club's clock. */
export async function clubToday(store: ClubStore): Promise<string> {
  const [club] = await store.list('club');
  return dateAt(new Date(), club?.timeZone ?? 'UTC');
}

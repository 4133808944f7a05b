import { dateAt } from '#contract/calendar/dateAt.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';

/** Today's date by the club's clock, wherever the computer stands: 2026-11-25. */
export function todayOfClub({ club }: Pick<ClubRecords, 'club'>): string {
  return dateAt(new Date(), club[0]?.timeZone ?? 'UTC');
}

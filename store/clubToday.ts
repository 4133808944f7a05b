import type { Kysely } from 'kysely';
import { dateAt } from '#contract/calendar/dateAt.ts';
import { kindTable } from './kindTable.ts';
import type { Tables } from './schema.ts';

/** Today's date by the club's clock. */
export async function clubToday(db: Kysely<Tables>, clubId: string): Promise<string> {
  const [club] = await kindTable(db, clubId, 'club').live();
  return dateAt(new Date(), club?.timeZone ?? 'UTC');
}

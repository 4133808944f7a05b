import type { Kysely } from 'kysely';
import { dateAt } from '#contract/calendar/dateAt.ts';
import { askedOften } from './askedOften.ts';
import type { Tables } from './schema.ts';

/** Today's date by the club's clock. */
export async function clubToday(db: Kysely<Tables>, clubId: string): Promise<string> {
  const [club] = await clockOf(db, { clubId });
  return dateAt(new Date(), club?.timeZone ?? 'UTC');
}

const clockOf = askedOften((db, { clubId }: { clubId: string }) =>
  db.selectFrom('club').select('timeZone').where('clubId', '=', clubId).where('removedSeq', 'is', null),
);

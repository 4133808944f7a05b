import { type Kysely, sql } from 'kysely';

/**
 * Orders in which the log is read by parts: a lifter's by day, with all that tells one state of it from another; that of a training day
 * by date; the sets with a note, which are few.
 */
export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.dropIndex('loggedSet_by_lifterId_doneOn').execute();
  await db.schema
    .createIndex('loggedSet_by_lifterId_doneOn')
    .on('loggedSet')
    .columns(['clubId', 'lifterId', 'doneOn', 'lift', 'struckAt', 'loggedAt'])
    .execute();
  await db.schema.dropIndex('loggedSet_by_dayId').execute();
  await db.schema
    .createIndex('loggedSet_by_dayId')
    .on('loggedSet')
    .columns(['clubId', 'dayId', 'doneOn', 'lifterId', 'order', 'id'])
    .where(sql.ref('dayId'), 'is not', null)
    .execute();
  await db.schema
    .createIndex('loggedSet_by_note')
    .on('loggedSet')
    .columns(['clubId', 'doneOn'])
    .where(sql.ref('note'), '!=', sql.lit(''))
    .execute();
}

import { type Kysely, sql } from 'kysely';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { newId } from './newId.ts';
import { setFields } from './readSets.ts';
import type { Tables } from './schema.ts';
import { setsWriter } from './setsWriter.ts';

/**
 * Puts sets aside in a table that the connection of `db` alone sees and that is in no file of the club, so that nobody waits for it; says
 * under which name. From there the database moves them into the log by itself, in a tenth of the time of writing them into it.
 */
export async function putAside(db: Kysely<Tables>, sets: readonly LoggedSet[]): Promise<string> {
  await sql`create temp table if not exists "setAside" as select * from "loggedSet" where 1 = 0`.execute(db);
  await sql`create unique index if not exists "setAside_pk" on "setAside" ("clubId", id)`.execute(db);
  const name = newId();
  await setsWriter(db, name, 'setAside')(sets);
  return name;
}

/** Writes what was put aside under a name into the club's log. */
export async function moveIn(db: Kysely<Tables>, clubId: string, name: string): Promise<void> {
  const columns = sql.join(setFields.map((field) => sql.ref(field.name)));
  await sql`insert into "loggedSet" ("clubId", ${columns})
    select ${clubId}, ${columns} from "setAside" where "clubId" = ${name}`.execute(db);
}

/** Forgets what was put aside under a name. */
export async function clearAside(db: Kysely<Tables>, name: string): Promise<void> {
  await db.deleteFrom('setAside').where('clubId', '=', name).execute();
}

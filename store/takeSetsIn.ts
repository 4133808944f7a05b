import type { Kysely } from 'kysely';
import { type Named, namedBySet } from '#contract/log/namedBySet.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { FileSet } from './ClubStore.ts';
import { appendChange } from './changeLog.ts';
import { clubToday } from './clubToday.ts';
import { kindTable } from './kindTable.ts';
import { checkDone, checkThere } from './logSets.ts';
import { newId } from './newId.ts';
import type { Database } from './open/Database.ts';
import type { Tables } from './schema.ts';
import { clearAside, moveIn, putAside } from './setsAside.ts';
import type { Writer } from './Writer.ts';

/**
 * Adds many sets at the end of the log, all of them as one change or none. They are put aside first, while others write; what nobody can
 * write beside is their move into the log, and what must still hold then is asked of each record and each day once.
 */
export async function takeSetsIn(
  { db, isOneConnection, write }: Pick<Database, 'db' | 'isOneConnection' | 'write'>,
  writer: Writer,
  given: readonly FileSet[],
): Promise<{ seq: number }> {
  const { clubId } = writer;
  const loggedAt = new Date().toISOString();
  const sets = given.map((set): LoggedSet => ({ ...set, id: newId(), loggedAt, struckAt: null }));
  const counts = sets.map(({ id }) => id);
  const named = namedOnce(sets);
  const days = new Map(sets.map(({ doneOn }, i) => [doneOn, `sets[${i}].doneOn`]));

  async function move(trx: Kysely<Tables>, name: string): Promise<{ seq: number }> {
    await checkThere(named, (kind, ids) => kindTable(trx, clubId, kind).idsAmong(ids));
    const today = await clubToday(trx, clubId);
    for (const [doneOn, field] of days) checkDone(field, doneOn, today);
    await moveIn(trx, clubId, name);
    return appendChange(trx, writer, { sets: { counts, struck: [] } });
  }

  // Where there are several connections, the one that moves them in has to be the one that put them aside.
  if (!isOneConnection) return write(clubId, async (trx) => move(trx, await putAside(trx, sets)));
  const name = await putAside(db, sets);
  try {
    return await write(clubId, (trx) => move(trx, name));
  } finally {
    await clearAside(db, name);
  }
}

/** Every record that sets name, with the first field that names it. */
function namedOnce(sets: readonly LoggedSet[]): Named[] {
  const first = new Map<string, Named>();
  for (const [i, set] of sets.entries())
    for (const { kind, id, field } of namedBySet(set)) {
      const key = `${kind} ${id}`;
      if (!first.has(key)) first.set(key, { kind, id, field: `sets[${i}].${field}` });
    }
  return [...first.values()];
}

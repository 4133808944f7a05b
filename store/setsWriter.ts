import type { CompiledQuery, Kysely } from 'kysely';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { setFields } from './readSets.ts';
import { cellsOf } from './rows.ts';
import type { LoggedSetRow, Tables } from './schema.ts';

/**
 * Writes sets as they are, and says how many `into` had not by their ids: those that it had stay. A query is spelled once for all
 * lots of the same length.
 */
export function setsWriter(
  db: Kysely<Tables>,
  clubId: string,
  into: 'loggedSet' | 'setAside' = 'loggedSet',
): (sets: readonly LoggedSet[]) => Promise<number> {
  const { adapter } = db.getExecutor();
  const queries = spelled.get(adapter) ?? new Map<string, CompiledQuery>();
  spelled.set(adapter, queries);

  function queryOf(rows: LoggedSetRow[]): CompiledQuery {
    const key = `${into} ${rows.length}`;
    const known = queries.get(key);
    if (known) return { ...known, parameters: rows.flatMap((row) => Object.values(row)) };
    const query = db
      .insertInto(into)
      .values(rows)
      .onConflict((conflict) => conflict.columns(['clubId', 'id']).doNothing())
      .compile();
    queries.set(key, query);
    return query;
  }

  return async (sets) => {
    let written = 0;
    for (let i = 0; i < sets.length; i += setsInOneQuery) {
      const rows = sets
        .slice(i, i + setsInOneQuery)
        .map((set) => ({ clubId, ...cellsOf(setFields, set) }) as LoggedSetRow);
      const { numAffectedRows } = await db.executeQuery(queryOf(rows));
      written += Number(numAffectedRows ?? 0);
    }
    return written;
  };
}

/** By the kind of database, then by where and how many sets are written at once. */
const spelled = new WeakMap<object, Map<string, CompiledQuery>>();

/** 24 columns each: well below what SQLite allows as parameters of one query (32,766). */
export const setsInOneQuery = 200;

import type SqliteFile from 'better-sqlite3';
import type { SqliteDatabase } from 'kysely';

/**
 * The database with each statement read once, not each time it is asked: the same few are asked for ever. A statement runs to its end
 * before anything else is asked, so that one for all is enough.
 */
export function preparedOnce(database: SqliteFile.Database): SqliteDatabase {
  const known = new Map<string, SqliteFile.Statement>();
  return {
    prepare(sql) {
      // What a statement gives back may be other columns from now on.
      if (changesTables.test(sql)) known.clear();
      const statement = known.get(sql) ?? database.prepare(sql);
      known.delete(sql);
      known.set(sql, statement);
      const [oldest] = known.keys();
      if (known.size > mostKnown && oldest !== undefined) known.delete(oldest);
      return statement;
    },
    close: () => void database.close(),
  };
}

const changesTables = /^\s*(create|alter|drop)\b/i;
/** Lists of ids are as many statements as they have lengths. */
const mostKnown = 200;

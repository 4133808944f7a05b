import type { Compilable, CompiledQuery, Kysely } from 'kysely';
import type { Tables } from './schema.ts';

/** Stands in a query for a value that is given when it is asked. */
class Mark {
  readonly name: string;
  constructor(name: string) {
    this.name = name;
  }
}

/**
 * A query that is asked all the time with other values: `build` spells it once for each kind of database, with marks where `at` names the
 * values. Spelling it anew takes longer than SQLite takes to answer it.
 */
export function askedOften<Values extends object, Row>(
  build: (db: Kysely<Tables>, at: Values) => Compilable<Row>,
): (db: Kysely<Tables>, values: Values) => Promise<Row[]> {
  const at = new Proxy({}, { get: (_, name) => new Mark(String(name)) }) as Values;
  const spelled = new WeakMap<object, CompiledQuery<Row>>();
  return async (db, values) => {
    const { adapter } = db.getExecutor();
    const query = spelled.get(adapter) ?? build(db, at).compile();
    spelled.set(adapter, query);
    const parameters = query.parameters.map((one) =>
      one instanceof Mark ? Reflect.get(values, one.name) : one,
    );
    return (await db.executeQuery<Row>({ ...query, parameters })).rows;
  };
}

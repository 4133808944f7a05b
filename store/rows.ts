import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { type Field, fieldsOf } from '#contract/records/fields.ts';
import { parseKept } from './parseKept.ts';
import type { Cell, RowOf } from './schema.ts';

/** A record as a row of its table. */
export function rowOf<K extends KindName>(
  clubId: string,
  kindName: K,
  record: RecordOf<K>,
  removedSeq: number | null,
): RowOf<K> {
  return { clubId, removedSeq, ...cellsOf(fieldsOf(kindName), record) } as RowOf<K>;
}

/** A row as the record it keeps. */
export function recordOf<K extends KindName>(kindName: K, row: RowOf<K>): RecordOf<K> {
  return valuesOf(fieldsOf(kindName), row) as RecordOf<K>;
}

/** The fields of a record as the cells of a row. */
export function cellsOf(fields: Field[], record: object): Record<string, Cell> {
  return Object.fromEntries(fields.map(({ name, sort }) => [name, cellOf(sort, Reflect.get(record, name))]));
}

/** The cells of a row as the fields of a record. `parse` reads a nested one. */
export function valuesOf(fields: Field[], row: object, parse: Parse = parseKept): object {
  const values: Record<string, unknown> = {};
  for (const { name, sort } of fields) values[name] = valueOf(sort, Reflect.get(row, name), parse);
  return values;
}

type Parse = (written: string) => unknown;

/** The same value for the same words: of many rows that hold alike ones each is read once, kept once and sent on once. */
export function sharedParse(): Parse {
  const known = new Map<string, unknown>();
  return (written) => {
    if (known.size > mostShared) known.clear();
    if (!known.has(written)) known.set(written, parseKept(written));
    return known.get(written);
  };
}

/** More than a club has of setups; speeds, which are seldom alike, would else be kept as long as rows are read. */
const mostShared = 20_000;

function cellOf(sort: Field['sort'], value: unknown): Cell {
  if (value === null) return null;
  if (sort === 'nested') return JSON.stringify(value);
  return sort === 'truth' ? Number(value) : (value as Cell);
}

function valueOf(sort: Field['sort'], cell: unknown, parse: Parse): unknown {
  if (cell === null) return null;
  if (sort === 'nested') return parse(cell as string);
  return sort === 'truth' ? cell === 1 : cell;
}

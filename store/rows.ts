import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { type Field, fieldsOf } from '#contract/records/fields.ts';
import type { Cell, RowOf } from './schema.ts';

/** A record as a row of its table. */
export function rowOf<K extends KindName>(clubId: string, kindName: K, record: RecordOf<K>): RowOf<K> {
  const cells = fieldsOf(kindName).map(({ name, sort }) => [name, cellOf(sort, Reflect.get(record, name))]);
  return { clubId, removedSeq: null, ...Object.fromEntries(cells) } as RowOf<K>;
}

/** A row as the record it keeps. */
export function recordOf<K extends KindName>(kindName: K, row: RowOf<K>): RecordOf<K> {
  const fields = fieldsOf(kindName).map(({ name, sort }) => [name, valueOf(sort, Reflect.get(row, name))]);
  return Object.fromEntries(fields) as RecordOf<K>;
}

function cellOf(sort: Field['sort'], value: unknown): Cell {
  if (value === null) return null;
  if (sort === 'nested') return JSON.stringify(value);
  return sort === 'truth' ? Number(value) : (value as Cell);
}

function valueOf(sort: Field['sort'], cell: unknown): unknown {
  if (cell === null) return null;
  if (sort === 'nested') return JSON.parse(cell as string);
  return sort === 'truth' ? cell === 1 : cell;
}

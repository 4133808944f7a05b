import { stringify } from 'csv-stringify/sync';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { writeCell } from './cells.ts';
import { columnsOf } from './columns.ts';

/** Records of one kind as CSV: a header whose names carry the units, then a line for each. */
export function writeCsv<K extends KindName>(kind: K, records: RecordOf<K>[]): string {
  const columns = columnsOf(kind);
  const lines = records.map((record) =>
    columns.map(({ field }) => writeCell(field, Reflect.get(record, field.name))),
  );
  return stringify([columns.map(({ name }) => name), ...lines], { quoted_match: /\r/ });
}

import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { labelKey } from '#contract/records/labels.ts';
import type { CsvProblem } from './CsvProblem.ts';
import type { ReadRow } from './readRow.ts';

/** Lines that cannot stand beside each other, or beside the records that the file leaves as they are: an id or a label twice. */
export function clashes<K extends KindName>(kind: K, rows: ReadRow<K>[], club: ClubRecords): CsvProblem[] {
  const problems: CsvProblem[] = [];
  const ids = new Set<string>();
  const inFile = new Set(rows.map(({ record }) => record.id));
  const untouched: RecordOf<KindName>[] = club[kind].filter(({ id }) => !inFile.has(id));
  const labels = new Set(untouched.map(labelKey));
  for (const { line, record } of rows) {
    if (ids.has(record.id))
      problems.push({ line, column: 'id', message: `The id "${record.id}" stands twice in this file.` });
    ids.add(record.id);
    const label = labelKey(record);
    if (label === null) continue;
    if (labels.has(label)) {
      problems.push({
        line,
        column: 'label',
        message: 'This label is taken already; each needs one of its own.',
      });
    }
    labels.add(label);
  }
  return problems;
}

import type { KindName, RecordOf } from './allKinds.ts';

/**
 * What no two records of a kind may share: the label, whatever its capitals, within the club; of anchor points and hookups
 * within their rack. Null where records of the kind carry no label of their own.
 */
export function labelKey(record: RecordOf<KindName>): string | null {
  if (!('label' in record)) return null;
  const label = record.label.toLowerCase();
  return 'rackId' in record ? `${record.rackId}\n${label}` : label;
}

/** What people call the record, where that can stand for its id in a file: its label or title or, of a person, the name. */
export function calledBy(record: RecordOf<KindName>): string | null {
  if ('label' in record) return record.label;
  if ('name' in record) return record.name;
  if ('methodDocument' in record)
    return `${record.methodDocument.title}, version ${record.methodDocument.version}`;
  // A training day is known by its date: its title says what is done.
  return 'title' in record && !('groups' in record) ? record.title : null;
}

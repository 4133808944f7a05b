import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import type { Fault } from '#contract/records/Fault.ts';
import { faultsOf } from '#contract/records/faultsOf.ts';
import { fieldsOf } from '#contract/records/fields.ts';
import type { ReaderWrites } from '#contract/records/ReaderWrites.ts';
import { namedFault, topField } from './namedFault.ts';
import { issueProblem, valueAt } from './shapeProblem.ts';

/** How a form names the fields of a kind; those that it does not show keep the name of the record. */
export type FormLabels<K extends KindName> = Partial<Record<Exclude<keyof RecordOf<K>, 'id'>, string>>;

/**
 * Everything that cannot be in a record as it stands in a form (`before` null: a new one), as the club's one judge of records
 * says it, in the words of the form. What is needed and still empty is left out: its own field asks for it.
 */
export function formFaults<K extends KindName>(
  kind: K,
  draft: object,
  before: RecordOf<K> | null,
  { club, today, labels, writes }: FormReader<K>,
): Fault[] {
  const record = { ...draft, id: before?.id ?? unnamed };
  const read = allKinds[kind].shape.safeParse(record);
  const faults = read.success
    ? faultsOf(kind, read.data as RecordOf<K>, before, withRecord(club, kind, read.data), today, writes)
    : read.error.issues
        .filter(({ code, path }) => code === 'custom' || !isUnanswered(valueAt(record, path)))
        .map((issue) => issueProblem(issue, record, (value) => spelt(kind, issue.path, value, writes)));
  return faults.map((fault) => {
    const field = topField(fault);
    const label: string | undefined = Reflect.get(labels, field);
    return { ...fault, field, message: namedFault(fault, label) };
  });
}

interface FormReader<K extends KindName> {
  club: ClubRecords;
  today: string;
  labels: FormLabels<K>;
  writes: Required<ReaderWrites>;
}

/** The id of a record that has none yet: no id that the store gives. */
const unnamed = ' ';

function withRecord(club: ClubRecords, kind: KindName, record: { id: string }): ClubRecords {
  const others: readonly { id: string }[] = club[kind].filter(({ id }) => id !== record.id);
  return { ...club, [kind]: [...others, record] };
}

/** Nothing was typed or chosen yet. */
export function isEmpty(value: unknown): boolean {
  return isUnanswered(value) || (Array.isArray(value) && value.length === 0);
}

/** What a field asks for by itself, where it is needed. */
function isUnanswered(value: unknown): boolean {
  return value === null || value === undefined || value === '';
}

/** A value as the form shows it; the end of its field's name tells that it is in metres. */
function spelt(kind: KindName, path: readonly PropertyKey[], value: unknown, writes: Required<ReaderWrites>) {
  const name = String(path.at(-1) ?? '');
  const isDate = fieldsOf(kind).some((field) => field.name === name && field.isDate);
  if (isEmpty(value)) return 'empty';
  if (typeof value === 'number' && name.endsWith('M')) return writes.lengthText(value);
  return typeof value === 'string' && isDate ? writes.dateText(value) : JSON.stringify(value);
}

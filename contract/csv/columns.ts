import type { KindName } from '#contract/records/allKinds.ts';
import { type Field, fieldsOf } from '#contract/records/fields.ts';
import { references } from '#contract/records/references.ts';

/** One column of a kind's file. */
export interface Column {
  /** As the header spells it, the unit at its end: `rest_length_a_m`, `force_N`. */
  name: string;
  field: Field;
  /** The kind that an id in this column belongs to; null for other columns. */
  refersTo: KindName | null;
}

/** The columns of a kind's file, id first. */
export function columnsOf(kind: KindName): Column[] {
  return fieldsOf(kind).map((field) => {
    const reference = references.find(({ from, path }) => from === kind && path === field.name);
    return { name: columnName(field.name), field, refersTo: reference?.to ?? null };
  });
}

/** `restLengthAM` becomes `rest_length_a_m`; the newton at the end keeps its capital: `pair_force_N`. */
function columnName(fieldName: string): string {
  const snake = fieldName.replaceAll(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
  return snake.replace(/_n$/, '_N');
}

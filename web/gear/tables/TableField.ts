import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { Usual } from '#contract/words/usualQuestion.ts';

/** A record while it is being filled in: required quantities may still be missing. */
export type Draft<K extends KindName> = {
  [F in keyof Omit<RecordOf<K>, 'id'>]: RecordOf<K>[F] | (RecordOf<K>[F] extends number ? null : never);
};

/** Fields of a record that hold such a value. */
type Holding<K extends KindName, Value> = {
  [F in keyof Draft<K>]: Draft<K>[F] extends Value ? F : never;
}[keyof Draft<K>] &
  string;

interface Said<K extends KindName> {
  label: string;
  hint?: string;
  /** Where the field matters; elsewhere it is not shown, and kept empty. Left out: always. */
  when?: (draft: Draft<K>) => boolean;
}

/** What one field of a form is: which value of the record it holds and how it is typed; what is allowed, the kind's shape says. */
export type TableField<K extends KindName> = Said<K> &
  (
    | { as: 'text' | 'date'; name: Holding<K, string | null> }
    | {
        as: 'quantity';
        name: Holding<K, number | null>;
        /** Which of the view's units; `scale` is a force that a scale shows as mass. */
        of: 'mass' | 'length' | 'scale';
        /** What is farther off is asked about. Common practice, no source. */
        usual?: Usual;
      }
    | { as: 'figure'; name: Holding<K, number | null> }
    | { as: 'check'; name: Holding<K, boolean> }
    | {
        as: 'choice';
        name: Holding<K, string | null>;
        options: readonly { value: string; word: string }[];
        /** The word for "none of them", kept as null. */
        none?: string;
        /** Where one adds another to choose from. */
        addAt?: { href: string; word: string };
      }
    | { as: 'lifts'; name: Holding<K, readonly ('squat' | 'bench' | 'deadlift')[]> }
  );

/** A draft without what does not matter in it. */
export function onlyWhatMatters<K extends KindName>(
  fields: readonly TableField<K>[],
  draft: Draft<K>,
): Draft<K> {
  const idle = fields.filter(({ when }) => when !== undefined && !when(draft));
  return { ...draft, ...Object.fromEntries(idle.map(({ name }) => [name, null])) };
}

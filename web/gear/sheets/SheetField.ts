import type { KindName, RecordOf } from '#contract/records/allKinds.ts';

/** A record while it is being filled in: required quantities may still be missing. */
export type Draft<K extends KindName> = {
  [F in keyof Omit<RecordOf<K>, 'id'>]: RecordOf<K>[F] | (RecordOf<K>[F] extends number ? null : never);
};

/** Fields of a record that hold such a value. */
type Holding<K extends KindName, Value> = {
  [F in keyof Draft<K>]: Draft<K>[F] extends Value ? F : never;
}[keyof Draft<K>] &
  string;

interface Said {
  label: string;
  hint?: string;
}

/** What one field of a form is: which value of the record it holds, how it is typed, what is allowed. */
export type SheetField<K extends KindName> = Said &
  (
    | { as: 'text'; name: Holding<K, string | null>; required?: boolean }
    | {
        as: 'date';
        name: Holding<K, string | null>;
        required?: boolean;
        /** Of what was done or measured: no later than this. */
        today?: string;
      }
    | {
        as: 'quantity';
        name: Holding<K, number | null>;
        /** Which of the view's units; `scale` is a force that a scale shows as mass. */
        of: 'mass' | 'length' | 'scale';
        min?: number;
        max?: number;
        required?: boolean;
      }
    | {
        as: 'figure';
        name: Holding<K, number | null>;
        word?: string;
        per?: number;
        min: number;
        max: number;
        whole?: boolean;
      }
    | { as: 'check'; name: Holding<K, boolean> }
    | {
        as: 'choice';
        name: Holding<K, string | null>;
        options: readonly { value: string; word: string }[];
        /** The word for "none of them", kept as null. */
        none?: string;
      }
    | { as: 'lifts'; name: Holding<K, readonly ('squat' | 'bench' | 'deadlift')[]> }
  );

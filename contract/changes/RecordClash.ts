import type { Clash, Fields } from './mergeFields.ts';
import type { Who } from './who.ts';

/** What stands against a change of a record: the record as it now is, who changed it last, and which fields both changed. */
export interface RecordClash {
  record: Fields & { id: string };
  /** Null: it is not known. */
  who: Who | null;
  fields: Clash[];
}

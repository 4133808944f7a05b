import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';

/** What one cell of a table holds: yes and no are 1 and 0, nested lists are JSON text. */
export type Cell = string | number | null;

type CellOf<T> = T extends boolean ? number : T extends string | number | null ? T : string;

/** The columns that every table of records has beside the fields of its kind. */
export interface RowBase {
  clubId: string;
  id: string;
  /** Number of the change that removed the record; null while the club still has it. */
  removedSeq: number | null;
}

/** One table per kind of record, a column per field. */
export type RowOf<K extends KindName> = RowBase & { [F in keyof RecordOf<K>]: CellOf<RecordOf<K>[F]> };

/** The append-only log: what every change did, as JSON text of its entries. */
export interface ChangeRow {
  clubId: string;
  /** Counts 1, 2, 3 ... within the club. */
  seq: number;
  madeAt: string;
  /** The change that this one took back, if it did. */
  undoes: number | null;
  entries: string;
  /** What it did to the log of sets, as JSON text; null where it left the log alone. */
  sets: string | null;
  /** As JSON text; null where it was made before anybody was asked. */
  who: string | null;
  /** Whether it put another club in the place of all that was there. */
  replaced: number;
}

/** What was solved for a day; appended, never changed. */
export interface PrescriptionRow {
  clubId: string;
  id: string;
  dayId: string;
  /** Counts 1, 2, 3 ... within the day. */
  number: number;
  solvedAt: string;
  document: string;
}

/** A plan of a season that was taken; appended, never changed. */
export type TakenPlanRow = { clubId: string; document: string } & Omit<TakenPlan, 'document'>;

/** A set that was done; only `struckAt` ever changes. */
export type LoggedSetRow = { clubId: string } & { [F in keyof LoggedSet]: CellOf<LoggedSet[F]> };

export type Tables = { [K in KindName]: RowOf<K> } & {
  change: ChangeRow;
  prescription: PrescriptionRow;
  takenPlan: TakenPlanRow;
  loggedSet: LoggedSetRow;
  /** Sets of a file that is taken in: `clubId` is their name there. No table of the file, see setsAside.ts. */
  setAside: LoggedSetRow;
};

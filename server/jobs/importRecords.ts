import { type CsvProblem, MOST_TOLD } from '#contract/csv/CsvProblem.ts';
import { readCsv } from '#contract/csv/readCsv.ts';
import type { KindName } from '#contract/records/allKinds.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newId } from '#store/newId.ts';

/** A spreadsheet file of records of one kind. */
export interface RecordsAsked {
  kind: KindName;
  text: string;
  /** Only look; change nothing. */
  dryRun: boolean;
}

/** What came of it, and the first things that are to be looked at; of a file in which anything is wrong, what. */
export type RecordsTaken =
  | { problems: readonly [CsvProblem, ...CsvProblem[]]; problemCount: number }
  | {
      rows: number;
      added: number;
      changed: number;
      unchanged: number;
      dryRun: boolean;
      seq: number;
      questions?: CsvProblem[];
      questionCount?: number;
    };

/** Takes a file in, whole or, where anything in it is wrong, not at all. */
export async function importRecords(
  store: ClubStore,
  { kind, text, dryRun }: RecordsAsked,
): Promise<RecordsTaken> {
  const club = await store.records();
  const making = { newId, today: await store.today() };
  const { records, added, changed, problems, questions } = readCsv(kind, text, club.records, making);
  const [first, ...others] = problems.slice(0, MOST_TOLD);
  if (first) return { problems: [first, ...others], problemCount: problems.length };
  const rows = records.length;
  const counts = { rows, added, changed, unchanged: rows - added - changed };
  // A file that says only what is there makes no change that one could undo.
  const { seq } = dryRun || added + changed === 0 ? club : await store.putAll(kind, records);
  if (questions.length === 0) return { ...counts, dryRun, seq };
  const told = { questions: questions.slice(0, MOST_TOLD), questionCount: questions.length };
  return { ...counts, dryRun, seq, ...told };
}

import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import type { ColumnMap } from '#contract/log/suggestColumns.ts';
import { request } from './request.ts';

/** Where the whole log is downloaded as a spreadsheet file. */
export const logFilePath = '/api/sets/csv';

/** What the server found in a file of sets. */
export interface LogFileAnswer {
  rows: number;
  added: number;
  alreadyThere: number;
  /** The first of them; `problemCount` counts all. */
  problems: readonly CsvProblem[];
  problemCount: number;
  headers: readonly string[];
  suggested: ColumnMap;
  /** Headers that stand for no column of the log. */
  notTaken: readonly string[];
  /** The unit in which each column with a unit was read. */
  units: Partial<Record<keyof ColumnMap, string>>;
  /** Sentences about cells that could have been read otherwise, and how they were. */
  readAs: readonly string[];
  firstOn: string | null;
  lastOn: string | null;
  lifters: readonly string[];
}

/** Sends a file of sets; with `dryRun` it is only read and reported on. Null columns: as the server suggests. */
export function sendLogFile(
  text: string,
  columns: ColumnMap | null,
  dryRun: boolean,
): Promise<LogFileAnswer> {
  return request<LogFileAnswer>('POST', '/api/sets/import', { text, columns, dryRun });
}

import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import type { ColumnMap } from '#contract/log/suggestColumns.ts';
import { request } from './request.ts';

/** Where the whole log is downloaded as a spreadsheet file. */
export const logFilePath = '/api/sets/csv';

/** Sends a file of sets; with `dryRun` it is only read and reported on. Null columns: as the server suggests. */
export function sendLogFile(
  text: string,
  columns: ColumnMap | null,
  dryRun: boolean,
): Promise<LogFileAnswer> {
  return request<LogFileAnswer>('POST', '/api/sets/import', { text, columns, dryRun });
}

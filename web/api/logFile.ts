import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import type { SlipTaking } from '#contract/log/slipAsked.ts';
import type { ColumnMap } from '#contract/log/suggestColumns.ts';
import { request } from './request.ts';

/** Where the whole log is downloaded as a spreadsheet file. */
export const logFilePath = '/api/sets/csv';

/** A file of sets as it is to be read. Null columns: as the server suggests; sets that look slipped are taken as `slips` says. */
interface LogFileAsked {
  text: string;
  columns: ColumnMap | null;
  slips?: Record<string, SlipTaking>;
}

/** Sends a file of sets; with `dryRun` it is only read and reported on. */
export function sendLogFile(file: LogFileAsked, dryRun: boolean): Promise<LogFileAnswer> {
  return request<LogFileAnswer>('POST', '/api/sets/import', { ...file, dryRun });
}

import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import type { KindName } from '#contract/records/allKinds.ts';
import { RequestError } from './request.ts';

/** Lines of a spreadsheet file, by what they would do to the club. */
export interface CsvCounts {
  rows: number;
  added: number;
  changed: number;
  unchanged: number;
}

/** What the server says to a spreadsheet file: what it holds and what is odd in it, or every wrong place. */
export type CsvAnswer =
  | ({ ok: true; seq: number; questions: FirstProblems } & CsvCounts)
  | { ok: false; problems: FirstProblems };

/** The first places of a file, and how many there are. */
export interface FirstProblems {
  first: readonly CsvProblem[];
  count: number;
}

/** Where a kind's records are downloaded as CSV, and sent to. */
export function csvPath(kind: KindName): string {
  return `/api/records/${kind}/csv`;
}

/** Sends a CSV file; with `dryRun` it is only read and reported on. */
export async function sendCsv(kind: KindName, text: string, dryRun: boolean): Promise<CsvAnswer> {
  const answer = await send(`${csvPath(kind)}${dryRun ? '?dryRun=1' : ''}`, 'text/csv', text);
  const said: unknown = await answer.json();
  if (answer.ok) {
    const {
      questions: first = [],
      questionCount: count = 0,
      ...taken
    } = said as CsvCounts & { seq: number; questions?: CsvProblem[]; questionCount?: number };
    return { ok: true, ...taken, questions: { first, count } };
  }
  const {
    problems: first,
    problemCount: count = 0,
    error,
  } = said as { problems?: CsvProblem[]; problemCount?: number; error?: { message: string } };
  if (first) return { ok: false, problems: { first, count } };
  throw new RequestError(answer.status, error?.message ?? 'The file was not imported.', null);
}

/** What the server says to an archive before it may take the club's place. */
export type ArchiveAnswer =
  | { ok: true; archive: ArchiveLook; here: ArchiveLook }
  | { ok: false; problems: readonly { line: number | null; column: string; message: string }[] };

/** Looks into an archive; nothing is changed. */
export async function tryArchive(file: Blob): Promise<ArchiveAnswer> {
  const answer = await send('/api/archive?dryRun=1', 'application/json', file);
  const said: unknown = await answer.json();
  if (answer.ok) return { ok: true, ...(said as { archive: ArchiveLook; here: ArchiveLook }) };
  const { problems, error } = said as {
    problems?: { line: number | null; field: string; message: string }[];
    error?: { message: string };
  };
  if (!problems) throw new RequestError(answer.status, error?.message ?? 'The file was not read.', null);
  return {
    ok: false,
    problems: problems.map(({ line, field, message }) => ({ line, column: field, message })),
  };
}

/** Puts an archive in the place of the whole club. */
export async function restoreArchive(file: Blob): Promise<void> {
  const answer = await send('/api/archive?replace=1', 'application/json', file);
  if (answer.ok) return;
  const { error } = (await answer.json()) as { error?: { message: string } };
  throw new RequestError(answer.status, error?.message ?? 'The archive was not restored.', null);
}

async function send(path: string, type: string, body: string | Blob): Promise<Response> {
  try {
    return await fetch(path, { method: 'POST', headers: { 'content-type': type }, body });
  } catch {
    throw new RequestError(
      0,
      "The club's server does not answer: start it again, nothing saved is lost.",
      null,
    );
  }
}

import type { ClubStore } from '#store/ClubStore.ts';
import { CliError } from './CliError.ts';

interface Refused {
  error: { field: string; message: string };
  /** The line is null where no one line is meant; a place within an archive has no column. */
  problems?: { line: number | null; column?: string; message: string }[];
  /** How many there are, where only the first are told. */
  problemCount?: number;
}

/** Asks the server's app in this process, so that the terminal keeps the same rules as the screens. */
export async function askApp(store: ClubStore, path: string, request: RequestInit = {}): Promise<Response> {
  const { createApp } = await import('#server/app.ts');
  const response = await createApp({ store, webRoot: '' }).request(`http://127.0.0.1/api${path}`, request);
  if (response.ok) return response;
  throw new CliError(sentences((await response.json()) as Refused), response.status < 500 ? 2 : 1);
}

/** The wrong lines of a file, or the one sentence there is. */
function sentences({ error, problems = [], problemCount = problems.length }: Refused): string {
  if (problems.length === 0) return error.message;
  const lines = problems.map(({ line, column = '', message }) =>
    line === null ? message : `Line ${line}${column === '' ? '' : `, ${column}`}: ${message}`,
  );
  const more = problemCount - problems.length;
  return [...lines, ...(more > 0 ? [`And ${more} more.`] : [])].join('\n');
}

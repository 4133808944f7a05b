import type { ClubStore } from '#store/ClubStore.ts';
import { CliError } from './CliError.ts';

interface Refused {
  error: { field: string; message: string };
  /** The line is null where no one line is meant; a place within an archive has no column. */
  problems?: { line: number | null; column?: string; message: string }[];
}

/** Asks the server's app in this process, so that the terminal keeps the same rules as the screens. */
export async function askApp(store: ClubStore, path: string, request: RequestInit = {}): Promise<Response> {
  const { createApp } = await import('#server/app.ts');
  const response = await createApp({ store, webRoot: '' }).request(`http://127.0.0.1/api${path}`, request);
  if (response.ok) return response;
  throw new CliError(sentences((await response.json()) as Refused), response.status < 500 ? 2 : 1);
}

/** Every wrong line of a file, or the one sentence there is. */
function sentences({ error, problems = [] }: Refused): string {
  if (problems.length === 0) return error.message;
  return problems
    .map(({ line, column = '', message }) =>
      line === null ? message : `Line ${line}${column === '' ? '' : `, ${column}`}: ${message}`,
    )
    .join('\n');
}

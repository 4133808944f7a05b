import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { CliError } from './CliError.ts';

/** The text of a file; of standard input where none is named, or `-`. */
export async function readInputText(file: string | undefined): Promise<string> {
  if (file === undefined || file === '-') return text(process.stdin);
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    throw new CliError(`The file ${file} cannot be read: ${whyNot(error)}`, 2);
  }
}

/** What the disk said, in a coach's words where it is one of the usual troubles. */
function whyNot(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : null;
  if (code === 'ENOENT' || code === 'ENOTDIR') return 'there is no such file.';
  if (code === 'EISDIR') return 'it is a folder.';
  if (code === 'EACCES' || code === 'EPERM') return 'this user may not read it.';
  return error instanceof Error ? error.message : String(error);
}

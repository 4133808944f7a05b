import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { CliError } from './CliError.ts';
import { whyNotOpen } from './whyNotOpen.ts';

/** The text of a file; of standard input where none is named, or `-`. */
export async function readInputText(file: string | undefined): Promise<string> {
  if (file === undefined || file === '-') return text(process.stdin);
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    throw new CliError(`The file ${file} cannot be read: ${whyNotOpen(error)}`, 2);
  }
}

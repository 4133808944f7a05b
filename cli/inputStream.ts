import { open } from 'node:fs/promises';
import type { Readable } from 'node:stream';
import { CliError } from './CliError.ts';
import { whyNotOpen } from './whyNotOpen.ts';

/** What is in a file, piece by piece; in standard input where none is named, or `-`. */
export async function inputStream(file: string | undefined): Promise<Readable> {
  if (file === undefined || file === '-') return process.stdin;
  try {
    const opened = await open(file);
    // A folder can be opened, and refuses only to be read.
    if ((await opened.stat()).isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
    return opened.createReadStream();
  } catch (error) {
    throw new CliError(`The file ${file} cannot be read: ${whyNotOpen(error)}`, 2);
  }
}

import { writeFile } from 'node:fs/promises';
import { CliError } from './CliError.ts';
import { whyNotOpen } from './whyNotOpen.ts';

/** Writes to a file and says so on standard error; to standard output where none is named, or `-`. */
export async function writeOutput(content: string, file: string | undefined): Promise<void> {
  if (file === undefined || file === '-') {
    process.stdout.write(content);
    return;
  }
  try {
    await writeFile(file, content);
  } catch (error) {
    throw new CliError(`The file ${file} cannot be written: ${whyNotOpen(error)}`);
  }
  process.stderr.write(`Written to ${file}.\n`);
}

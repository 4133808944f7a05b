import { once } from 'node:events';
import { lstat, rename, rm } from 'node:fs/promises';
import { writeKept } from '#store/writeKept.ts';
import { CliError } from './CliError.ts';
import { whyNotOpen } from './whyNotOpen.ts';

/**
 * Writes to a file and says so on standard error; to standard output where none is named, or `-`. What a club exports is as private as
 * its own file: it is written for its owner alone, follows no link, and takes its name when it is whole.
 */
export async function writeOutput(
  content: string | AsyncIterable<string>,
  file: string | undefined,
): Promise<void> {
  const pieces = typeof content === 'string' ? [content] : content;
  if (file === undefined || file === '-') {
    for await (const piece of pieces) if (!process.stdout.write(piece)) await once(process.stdout, 'drain');
    return;
  }
  const beside = `${file}.writing-${process.pid}`;
  try {
    const there = await lstat(file).catch(() => null);
    if (there !== null && !there.isFile() && !there.isDirectory())
      throw new Error(
        'it is a link or not an ordinary file; name an ordinary one, or leave --out off and redirect.',
      );
    await writeKept(beside, pieces);
    await rename(beside, file);
  } catch (error) {
    await rm(beside, { force: true });
    throw new CliError(`The file ${file} cannot be written: ${whyNotOpen(error)}`);
  }
  process.stderr.write(`Written to ${file}.\n`);
}

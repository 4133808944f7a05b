import { writeFile } from 'node:fs/promises';
import { makeWhole } from './open/makeWhole.ts';

/** Writes a new file for its owner's eyes only: it is whole and on the disk, its name too, when the promise resolves, and until then not there. */
export async function writeKept(
  path: string,
  pieces: Iterable<string> | AsyncIterable<string>,
): Promise<void> {
  await makeWhole(path, (beside) => writeFile(beside, pieces, { flag: 'wx', mode: 0o600 }));
}

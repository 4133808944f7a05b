import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { runHere } from '#server/jobs/runHere.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/**
 * The archive of the club as a stream with its length: a thread writes it to a file for the owner's eyes only, which is gone once it is
 * sent, so that neither memory nor waiting of others grows with the log.
 */
export async function sentArchive(
  store: ClubStore,
  run: RunWork,
): Promise<{ body: ReadableStream; bytes: number }> {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  const remove = () => rm(folder, { recursive: true, force: true });
  try {
    const path = join(folder, 'archive.json');
    await whereReadable(store, run)('writeArchive', { door: readingDoorOf(store), path });
    const file = await open(path);
    const { size } = await file.stat();
    // What is open can be read though its name is gone; where a system refuses that, it goes at the end.
    await remove().catch(() => {});
    const stream = file.createReadStream().once('close', () => void remove().catch(() => {}));
    return { body: Readable.toWeb(stream) as ReadableStream, bytes: size };
  } catch (error) {
    await remove().catch(() => {});
    throw error;
  }
}

/** A file that was taken away can still be read here, where it is open, and by nobody else. */
export function whereReadable(store: ClubStore, run: RunWork): RunWork {
  return store.trouble() === null ? run : runHere(store);
}

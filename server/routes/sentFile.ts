import { mkdtemp, open, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';

/**
 * What `write` puts into a new file, as a stream with its length: a file for the owner's eyes only, which is gone once it is sent. Where a
 * thread writes it, neither memory nor waiting of others grows with what is in it.
 */
export async function sentFile(
  write: (path: string) => Promise<unknown>,
): Promise<{ body: ReadableStream; bytes: number }> {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  const remove = () => rm(folder, { recursive: true, force: true });
  try {
    const path = join(folder, 'sent');
    await write(path);
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

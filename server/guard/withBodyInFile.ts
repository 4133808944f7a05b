import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream } from 'node:stream/web';
import type { Context } from 'hono';
import { Refusal } from '#store/Refusal.ts';
import { refuseOtherThan } from './readText.ts';

/**
 * Puts the body into a file for the owner's eyes only, which lasts as long as `use`: however long it is, no more than a piece is held.
 * Refused when it is announced as anything but `type`.
 */
export async function withBodyInFile<Result>(
  c: Context,
  type: string,
  use: (path: string) => Promise<Result>,
): Promise<Result> {
  refuseOtherThan(c, type);
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-'));
  try {
    const path = join(folder, 'sent');
    const { body } = c.req.raw;
    const sent = body === null ? Readable.from([]) : Readable.fromWeb(body as ReadableStream);
    await pipeline(sent, createWriteStream(path, { mode: 0o600 })).catch((error: unknown) => {
      throw isFull(error) ? new Refusal('unavailable', '', noRoom(tmpdir())) : error;
    });
    return await use(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function isFull(error: unknown): boolean {
  return error instanceof Error && 'code' in error && (error.code === 'ENOSPC' || error.code === 'EDQUOT');
}

function noRoom(folder: string): string {
  return `There is no room in ${folder} for the file that was sent. Nothing was changed; make room there, then send it again.`;
}

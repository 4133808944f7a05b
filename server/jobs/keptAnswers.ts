import { createHash, webcrypto } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';

/** An answer with what it rests on, compared part by part. */
export interface KeptAnswer {
  basis: readonly unknown[];
  answer: unknown;
  /** By what name other answers rest on it, where it is an object. */
  mark: string | null;
}

/** Answers of one work, by their keys. */
export interface AnswersOfWork {
  find(key: string): KeptAnswer | undefined;
  put(key: string, kept: KeptAnswer): void;
}

/** What was worked out, kept beyond one run of the server. It may be thrown away at any time: then it is worked out anew. */
export interface KeptAnswers {
  /** Answers of `work`; beyond `most` the one that was put the longest ago goes. */
  of(work: string, most: number): AnswersOfWork;
  /** Resolves when all that was put is on the disk, or was refused by it. */
  written(): Promise<void>;
}

/** Keeps nothing: in the terminal, in tests, for a club without a file. */
export const nothingKept: KeptAnswers = {
  of: () => ({ find: () => undefined, put() {} }),
  written: async () => {},
};

/** The folder beside a club's file in which its answers are kept. */
export function keptFolderOf(clubPath: string): string {
  return `${clubPath}.kept`;
}

/** Throws all that is kept away. */
export function forgetKept(clubPath: string): void {
  rmSync(keptFolderOf(clubPath), { recursive: true, force: true });
}

/**
 * Answers of the club at `clubPath` that were worked out by the program as it is now, of which `reckoning` is the mark; those of any
 * other program are thrown away. A file an answer, for its owner's eyes only: there whole or not at all, and one that is damaged
 * counts as not there. Where the disk takes nothing more, answers are only not kept. They are written one after another behind what else
 * goes on, and of several of one key put meanwhile the last alone.
 */
export function keptAnswers(clubPath: string, reckoning: string): KeptAnswers {
  const all = keptFolderOf(clubPath);
  const now = join(all, reckoning);
  for (const name of namesIn(all)) {
    if (name !== reckoning) rmSync(join(all, name), { recursive: true, force: true });
  }
  let complained = false;
  const waiting = new Map<string, Waiting>();
  const going = new Set<string>();
  let writing: Promise<void> | undefined;

  async function writeAll(): Promise<void> {
    for (let [first] = waiting; first !== undefined; [first] = waiting) {
      const [path, one] = first;
      await writeWhole(path, one).catch((error: unknown) => {
        if (!complained) console.error('What was worked out cannot be kept for the next start:', error);
        complained = true;
      });
      if (waiting.get(path) === one) waiting.delete(path);
      for (const gone of going) {
        going.delete(gone);
        await rm(gone, { force: true }).catch(() => {});
      }
    }
    writing = undefined;
  }

  return {
    written: async () => writing,
    of(work, most) {
      const folder = join(now, work);
      const order = oldestFirst(folder);
      const pathOf = (key: string) => join(folder, digest(Buffer.from(key)));
      return {
        find(key) {
          const path = pathOf(key);
          return waiting.get(path)?.written ?? readWhole(path, key);
        },
        put(key, kept) {
          const path = pathOf(key);
          order.delete(path);
          order.add(path);
          going.delete(path);
          waiting.set(path, { written: { ...kept, key }, folder });
          const [oldest] = order;
          if (order.size > most && oldest !== undefined) {
            order.delete(oldest);
            waiting.delete(oldest);
            going.add(oldest);
          }
          writing ??= writeAll();
        },
      };
    },
  };
}

type Written = KeptAnswer & { key: string };

interface Waiting {
  written: Written;
  folder: string;
}

/** Before the answer stands the sum of its bytes: a disk may give back others than it was given. */
async function writeWhole(path: string, { written, folder }: Waiting): Promise<void> {
  const body = serialize(written);
  const sum = Buffer.from(await webcrypto.subtle.digest('SHA-256', body)).toString('hex');
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const half = `${path}.${process.pid}`;
  try {
    await writeFile(half, Buffer.concat([Buffer.from(sum), body]), { mode: 0o600 });
    await rename(half, path);
  } catch (error) {
    await rm(half, { force: true });
    throw error;
  }
}

function readWhole(path: string, key: string): KeptAnswer | undefined {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch {
    return undefined;
  }
  const body = bytes.subarray(digestLength);
  if (digest(body) !== bytes.subarray(0, digestLength).toString('latin1')) return undefined;
  const { key: written, ...kept } = deserialize(body) as Written;
  return written === key ? kept : undefined;
}

function oldestFirst(folder: string): Set<string> {
  const files = namesIn(folder).map((name) => join(folder, name));
  const putAt = new Map(files.map((path) => [path, statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0]));
  return new Set(files.toSorted((a, b) => putAt.get(a)! - putAt.get(b)!));
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

const digestLength = 64;
function digest(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}

import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import { readFile, rename, rm } from 'node:fs/promises';
import { writeKept } from '#store/writeKept.ts';

/**
 * The secret from which the paths follow under which telephones read calendars. It lies beside the club's file, for its owner alone, and
 * is in no archive, snapshot or log of changes.
 */
export interface CalendarKey {
  /** The unguessable part of the address of a lifter's calendar; null: of the club's. */
  partOf(lifterId: string | null): string;
  /** Whose calendar a part stands for: a lifter's among these, or the club's (null); undefined: nobody's. */
  whose(part: string, lifterIds: readonly string[]): string | null | undefined;
  /** Makes another secret: every address given out before is nobody's from then on. */
  renew(): Promise<void>;
}

/** The key of the club at a path; one is made where there is none yet. */
export async function calendarKey(clubPath: string): Promise<CalendarKey> {
  const file = `${clubPath}.calendar-key`;
  let secret = (await readSecret(file)) ?? (await makeSecret(file));
  const partOf = (lifterId: string | null) =>
    createHmac('sha256', secret)
      .update(lifterId === null ? 'club' : `lifter ${lifterId}`)
      .digest('base64url');
  return {
    partOf,
    whose: (part, lifterIds) => [null, ...lifterIds].find((id) => isSame(part, partOf(id))),
    async renew() {
      secret = await makeSecret(file);
    },
  };
}

const secretBytes = 32;

async function readSecret(file: string): Promise<Buffer | null> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '';
    throw error;
  });
  const secret = Buffer.from(text.trim(), 'hex');
  // A half of one would be guessed sooner: whatever is no whole secret is made anew.
  return secret.length === secretBytes ? secret : null;
}

async function makeSecret(file: string): Promise<Buffer> {
  const secret = randomBytes(secretBytes);
  const beside = `${file}.${process.pid}`;
  await rm(beside, { force: true });
  await writeKept(beside, `${secret.toString('hex')}\n`);
  await rename(beside, file);
  return secret;
}

/** Takes as long for a nearly right part as for a wrong one. */
function isSame(given: string, right: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(right)];
  return a.length === b.length && timingSafeEqual(a, b);
}

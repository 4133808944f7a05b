import type { Kysely } from 'kysely';
import { namedBySet } from '#contract/log/namedBySet.ts';
import { type GivenSet, givenSet, type LoggedSet } from '#contract/records/loggedSet.ts';
import { asShaped } from './asShaped.ts';
import type { Correction } from './ClubStore.ts';
import { loggedBy } from './changeLog.ts';
import { clubToday } from './clubToday.ts';
import { kindTable } from './kindTable.ts';
import { loggedAgain } from './loggedAgain.ts';
import { addSets, checkDone, checkThere } from './logSets.ts';
import { Refusal } from './Refusal.ts';
import { readSet } from './readSets.ts';
import type { Tables } from './schema.ts';
import { turnSets } from './strikeSets.ts';
import type { Writer } from './Writer.ts';

/**
 * Strikes mistaken sets and puts corrected ones in their place, all as one change. Without an order a set takes that of the
 * mistaken one, or comes last where the lifter or the day was the mistake. What the mistaken set named may be named again, even
 * if the club no longer has it. A correction that is sent again is there already. To be called within a transaction.
 */
export async function correctSets(
  db: Kysely<Tables>,
  writer: Writer,
  corrections: readonly Correction[],
): Promise<{ sets: LoggedSet[]; seq: number }> {
  const { clubId } = writer;
  const sets: LoggedSet[] = [];
  const counts: string[] = [];
  const struck = new Set<string>();
  for (const { id, set } of corrections) {
    const corrected = set && asShaped(givenSet, set);
    const again = corrected && (await loggedAgain(db, clubId, 'id', corrected));
    if (again) {
      sets.push(again);
      continue;
    }
    const mistaken = await readSet(db, clubId, id);
    if (!mistaken) throw new Refusal('missing', 'id', `The log has no set with the id "${id}".`);
    if (mistaken.struckAt !== null || struck.has(id)) {
      const sentence = 'This set is struck already; only a set that counts can be corrected.';
      throw new Refusal('conflict', 'id', sentence);
    }
    struck.add(id);
    if (!corrected) continue;
    const added = await addInPlace(db, clubId, mistaken, corrected);
    sets.push(added);
    counts.push(added.id);
  }
  // All of it was heard before.
  if (struck.size === 0) return { sets, seq: await loggedBy(db, clubId, sets[0]!.id) };
  const { seq } = await turnSets(db, writer, { counts, struck: [...struck] });
  return { sets, seq };
}

async function addInPlace(
  db: Kysely<Tables>,
  clubId: string,
  mistaken: LoggedSet,
  corrected: GivenSet,
): Promise<LoggedSet> {
  const named = namedBySet(mistaken);
  const newlyNamed = namedBySet(corrected).filter(
    (one) => !named.some(({ kind, id }) => kind === one.kind && id === one.id),
  );
  await checkThere(newlyNamed, (kind, ids) => kindTable(db, clubId, kind).idsAmong(ids));
  const { doneOn } = corrected;
  if (doneOn !== mistaken.doneOn) checkDone('doneOn', doneOn, await clubToday(db, clubId));
  const sameDay = corrected.lifterId === mistaken.lifterId && doneOn === mistaken.doneOn;
  const order = corrected.order ?? (sameDay ? mistaken.order : null);
  const [set] = await addSets(db, clubId, [{ ...corrected, order }]);
  return set!;
}

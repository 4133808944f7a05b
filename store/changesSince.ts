import type { Kysely } from 'kysely';
import { formerKinds } from '#contract/archive/formerRecord.ts';
import type { ClubChanges, Standing } from '#contract/changes/clubState.ts';
import { type KindName, kindNames } from '#contract/records/allKinds.ts';
import { type Change, changeAt, changesAfter, latestSeq } from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import type { Tables } from './schema.ts';

/**
 * What was done to a club after the change that a reader stands at. Null where only the whole club will do: the reader's change is
 * none of this log, the club was replaced since, or so much was done that the whole is hardly more. To be called within one reading.
 */
export async function changesSince(
  db: Kysely<Tables>,
  clubId: string,
  known: Standing,
): Promise<ClubChanges | null> {
  const from = await changeAt(db, clubId, known.seq);
  if (!from || from.madeAt !== known.madeAt) return null;
  if ((await latestSeq(db, clubId)) - known.seq > mostChanges) return null;
  const changes = await changesAfter(db, clubId, known.seq);
  const touched = idsByKind(changes);
  const count = [...touched.values()].reduce((sum, ids) => sum + ids.size, 0);
  if (count > mostRecords || changes.some(({ replaced }) => replaced)) return null;
  const put: Partial<Record<KindName, { id: string }[]>> = {};
  const removed: ClubChanges['removed'] = {};
  for (const [kind, ids] of touched) {
    const there = await kindTable(db, clubId, kind).among([...ids]);
    for (const { id } of there) ids.delete(id);
    if (there.length > 0) put[kind] = there;
    if (ids.size > 0) removed[kind] = [...ids];
  }
  const { seq, madeAt } = changes.at(-1) ?? from;
  return {
    seq,
    madeAt,
    put: put as ClubChanges['put'],
    removed,
    log: changes.some(touchesLog),
    changes: changes.map((change) => ({
      seq: change.seq,
      madeAt: change.madeAt,
      who: change.who,
      undoes: change.undoes,
    })),
  };
}

/** Above these the whole club is asked for at little more cost: an evening's changes of a crowd, and the records of a fair club. */
const mostChanges = 1000;
const mostRecords = 500;

function idsByKind(changes: readonly Change[]): Map<KindName, Set<string>> {
  const entries = changes.flatMap((change) => change.entries);
  const ofKind = (wanted: KindName) => entries.filter(({ kind }) => kind === wanted).map(({ id }) => id);
  return new Map(kindNames.map((kind) => [kind, new Set(ofKind(kind))]));
}

/** Sets go and come back with their lifter, and gear that is gone is named beside them. What is new is taken for what came back. */
function touchesLog({ sets, entries }: Change): boolean {
  return sets !== null || entries.some(({ kind, before, after }) => shown.has(kind) && !(before && after));
}

const shown: ReadonlySet<KindName> = new Set<KindName>(['lifter', ...formerKinds]);

import type { Kysely } from 'kysely';
import { formerKinds } from '#contract/archive/formerRecord.ts';
import type { ClubChanges, Standing } from '#contract/changes/clubState.ts';
import { byDayAndOrder } from '#contract/log/byDayAndOrder.ts';
import { type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { type Change, changeAt, latestSeq } from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import type { NewestChanges } from './newestChanges.ts';
import type { Tables } from './schema.ts';

/**
 * What was done to a club after the change that a reader stands at. Null where only the whole club will do: the reader's change is
 * none of this log, the club was replaced since, or so much was done that the whole is hardly more. To be called within one reading.
 */
export async function changesSince(
  db: Kysely<Tables>,
  clubId: string,
  newest: NewestChanges,
  known: Standing,
): Promise<ClubChanges | null> {
  const from = await changeAt(db, clubId, known.seq);
  if (!from || from.madeAt !== known.madeAt) return null;
  if ((await latestSeq(db, clubId)) - known.seq > mostChanges) return null;
  const changes = await newest.after(db, known.seq);
  const ids = idsByKind(changes);
  const count = [...ids.values()].reduce((sum, { size }) => sum + size, 0);
  if (count > mostRecords || changes.some(({ replaced }) => replaced)) return null;
  const put: Partial<Record<KindName, { id: string }[]>> = {};
  const removed: ClubChanges['removed'] = {};
  for (const [kind, ofKind] of ids) {
    const there = await kindTable(db, clubId, kind).among([...ofKind]);
    for (const { id } of there) ofKind.delete(id);
    if (there.length > 0) put[kind] = there;
    if (ofKind.size > 0) removed[kind] = [...ofKind];
  }
  const { seq, madeAt } = changes.at(-1) ?? from;
  return {
    seq,
    madeAt,
    put: put as ClubChanges['put'],
    removed,
    sets: await touched(db, clubId, newest, changes),
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
/** Some seconds of a crowd. */
const mostSets = 500;

function idsByKind(changes: readonly Change[]): Map<KindName, Set<string>> {
  const entries = changes.flatMap((change) => change.entries);
  const ofKind = (wanted: KindName) => entries.filter(({ kind }) => kind === wanted).map(({ id }) => id);
  return new Map(kindNames.map((kind) => [kind, new Set(ofKind(kind))]));
}

/** The sets that changes touched; null where others may read otherwise by them, or where they are so many that a part of the log is asked for at little more cost. */
async function touched(
  db: Kysely<Tables>,
  clubId: string,
  newest: NewestChanges,
  changes: readonly Change[],
): Promise<LoggedSet[] | null> {
  if (changes.some(changesOthers)) return null;
  const ids = new Set(changes.flatMap(({ sets }) => (sets ? [...sets.struck, ...sets.counts] : [])));
  if (ids.size > mostSets) return null;
  const sets = await newest.setsOf(db, changes);
  const lifters = await kindTable(db, clubId, 'lifter').among([
    ...new Set(sets.map(({ lifterId }) => lifterId)),
  ]);
  const there = new Set(lifters.map(({ id }) => id));
  return sets.filter(({ lifterId }) => there.has(lifterId)).sort(byDayAndOrder);
}

/**
 * Sets go and come back with their lifter, and gear that is gone is named beside them: a set that takes another's place may name such gear
 * too. What is new is taken for what came back.
 */
function changesOthers({ entries, sets }: Change): boolean {
  const corrects = sets !== null && sets.counts.length > 0 && sets.struck.length > 0;
  return corrects || entries.some(({ kind, before, after }) => shown.has(kind) && !(before && after));
}

const shown: ReadonlySet<KindName> = new Set<KindName>(['lifter', ...formerKinds]);

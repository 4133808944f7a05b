import type { Kysely } from 'kysely';
import type { DoneChange, DoneChanges } from '#contract/changes/doneChange.ts';
import { type KindName, kindNames, type RecordOf } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { recordName } from '#contract/records/recordName.ts';
import {
  type Change,
  type ChangeEntry,
  changeAt,
  changesBefore,
  lastChange,
  takingsOf,
} from './changeLog.ts';
import { kindTable } from './kindTable.ts';
import type { Tables } from './schema.ts';
import type { seenBy } from './seenBy.ts';
import { whyNotUndone } from './undoChange.ts';
import { type UndoStates, undoStates } from './undoStates.ts';

/** What is kept as one person sees it. */
type Seen = Pick<ReturnType<typeof seenBy>, 'change' | 'one'>;

/**
 * The changes before a number, newest first, and which of all is undone and done again next. To be called within one reading.
 */
export async function whatWasDone(
  db: Kysely<Tables>,
  clubId: string,
  seen: Seen,
  { before, most }: { before: number | null; most: number },
): Promise<DoneChanges> {
  const states = undoStates(await takingsOf(db, clubId));
  const tell = teller(db, clubId, states, seen);
  const found = await changesBefore(db, clubId, before, most + 1);
  const undo = await nextToUndo(db, clubId, states);
  const redo = nextToRedo(states, undo?.seq ?? 0);
  const again = redo === null ? undefined : (await changesBefore(db, clubId, redo + 1, 1))[0];
  return {
    changes: await Promise.all(found.slice(0, most).map(tell)),
    undo: undo && (await tell(undo)),
    redo: again ? await tell(again) : null,
    hasOlder: found.length > most,
  };
}

/** The last change that is not taken back. One that touched nothing is passed over; one that replaced the club is the end. */
async function nextToUndo(db: Kysely<Tables>, clubId: string, states: UndoStates): Promise<Change | null> {
  return lastChange(
    db,
    clubId,
    ({ seq, entries, sets, replaced }) =>
      states.back(seq) === null && !states.isUndone(seq) && (replaced || sets !== null || entries.length > 0),
  );
}

/** The last that takes back and holds, where nothing was done since but that some were done again. */
function nextToRedo({ takings, isUndone, back }: UndoStates, lastDone: number): number | null {
  const found = takings.find(({ seq }) => !isUndone(seq) && !back(seq)!.again);
  return found && found.seq > lastDone ? found.seq : null;
}

function teller(db: Kysely<Tables>, clubId: string, states: UndoStates, seen: Seen) {
  const names = new Map<string, string>();
  const nameOf = async (lifterId: string): Promise<string> => {
    const known = names.get(lifterId);
    if (known !== undefined) return known;
    const lifters = kindTable(db, clubId, 'lifter');
    const [there] = [...(await lifters.among([lifterId])), ...(await lifters.removedAmong([lifterId]))];
    const name = seen.one('lifter', there ?? null)?.name ?? 'somebody';
    names.set(lifterId, name);
    return name;
  };

  async function recordsOf(entries: readonly ChangeEntry[]): Promise<DoneChange['records']> {
    const groups = new Map<string, ChangeEntry[]>();
    for (const entry of entries) {
      const key = `${entry.kind} ${didOf(entry)}`;
      groups.set(key, [...(groups.get(key) ?? []), entry]);
    }
    const told = [...groups.values()].map(async (group) => {
      const [first] = group as [ChangeEntry];
      const record = (first.after ?? first.before)! as RecordOf<KindName>;
      const owners = new Set(group.map(({ after, before }) => Reflect.get((after ?? before)!, 'lifterId')));
      const [owner] = owners;
      return {
        kind: first.kind,
        did: didOf(first),
        count: group.length,
        called: recordName(first.kind, record),
        of: owners.size === 1 && typeof owner === 'string' ? await nameOf(owner) : null,
      };
    });
    // What owns comes first: the rest goes and comes with it.
    return (await Promise.all(told)).toSorted(
      (a, b) => kindNames.indexOf(a.kind) - kindNames.indexOf(b.kind),
    );
  }

  async function setsOf({ sets, madeAt }: Change): Promise<DoneChange['sets']> {
    const groups = new Map<string, DoneChange['sets'][number]>();
    for (const did of ['counts', 'struck'] as const) {
      for (const { lifterId, lift, loggedAt } of await setRows(db, clubId, sets?.[did] ?? [])) {
        const isNew = did === 'counts' && Math.abs(Date.parse(loggedAt) - Date.parse(madeAt)) < sameMs;
        const key = `${did} ${isNew} ${lifterId} ${lift}`;
        const group = groups.get(key) ?? { did, isNew, count: 0, lifter: await nameOf(lifterId), lift };
        groups.set(key, { ...group, count: group.count + 1 });
      }
    }
    return [...groups.values()];
  }

  return async (change: Change): Promise<DoneChange> => {
    const { seq, madeAt, who, replaced } = change;
    const back = states.back(seq);
    // What takes back, or does again, is told as what was first done.
    const told = seen.change((back && (await changeAt(db, clubId, back.of))) ?? change);
    const isReplacing = replaced && change.entries.length === 0 && change.sets === null;
    const isUndone = states.isUndone(seq);
    const whyNot = isUndone ? 'It is taken back already.' : await whyNotUndone(db, clubId, change);
    const [records, sets] = [await recordsOf(told.entries), await setsOf(told)];
    return { seq, madeAt, who, back, isUndone, replaced: isReplacing, records, sets, whyNot };
  };
}

/** Sets of a change get their instant a moment before the change gets its own. */
const sameMs = 60_000;

function didOf({ before, after }: ChangeEntry): 'added' | 'changed' | 'removed' {
  if (before === null) return 'added';
  return after === null ? 'removed' : 'changed';
}

async function setRows(db: Kysely<Tables>, clubId: string, ids: readonly string[]) {
  const rows: { lifterId: string; lift: Lift; loggedAt: string }[] = [];
  for (let i = 0; i < ids.length; i += idsInOneQuery) {
    const some = await db
      .selectFrom('loggedSet')
      .select(['lifterId', 'lift', 'loggedAt'])
      .where('clubId', '=', clubId)
      .where('id', 'in', ids.slice(i, i + idsInOneQuery))
      .orderBy('order')
      .execute();
    rows.push(...(some as typeof rows));
  }
  return rows;
}

/** Well below what any database allows as parameters of one query. */
const idsInOneQuery = 500;

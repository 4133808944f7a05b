import type { Kysely } from 'kysely';
import { recordName } from '#contract/records/recordName.ts';
import { type Change, changeAt } from './changeLog.ts';
import { checkShape } from './checks.ts';
import { commitChange } from './commitChange.ts';
import { kindTable } from './kindTable.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import { undoSets } from './strikeSets.ts';

/** Takes a change back by writing its opposite. Every record that it touched must still be as it left it. */
export async function undoChange(db: Kysely<Tables>, clubId: string, seq: number): Promise<Change> {
  const change = await changeAt(db, clubId, seq);
  if (!change) throw new Refusal('missing', 'seq', `There is no change number ${seq} to undo.`);
  if (change.sets) return undoSets(db, clubId, seq, change.sets);
  if (change.entries.length === 0) {
    throw new Refusal('conflict', 'seq', `Change number ${seq} touched no record; there is nothing to undo.`);
  }
  for (const { kind, id, before, after } of change.entries) {
    const now = await kindTable(db, clubId, kind).one(id);
    const touched = after ?? before;
    // Read by today's shape: the log may be older than a field that has a default.
    const left = after && checkShape(kind, after);
    if (JSON.stringify(now) === JSON.stringify(left) || !touched) continue;
    const name = recordName(kind, touched);
    throw new Refusal('conflict', 'seq', `This cannot be undone: the ${name} was changed again since.`);
  }
  const edits = change.entries.map(({ kind, id, before }) => ({ kind, id, after: before }));
  return commitChange(db, clubId, edits, seq);
}

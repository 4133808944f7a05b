import type { Kysely } from 'kysely';
import { recordName } from '#contract/records/recordName.ts';
import { byWhomSince } from './byWhomSince.ts';
import { type Change, changeAt } from './changeLog.ts';
import { checkShape } from './checks.ts';
import { commitChange } from './commitChange.ts';
import { kindTable } from './kindTable.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import { undoSets } from './strikeSets.ts';
import type { Writer } from './Writer.ts';

/** Takes a change back by writing its opposite. Every record that it touched must still be as it left it. */
export async function undoChange(db: Kysely<Tables>, writer: Writer, seq: number): Promise<Change> {
  const { clubId } = writer;
  const change = await changeAt(db, clubId, seq);
  if (!change) throw new Refusal('missing', 'seq', `There is no change number ${seq} to undo.`);
  if (change.sets) return undoSets(db, writer, seq, change.sets);
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
    const by = await byWhomSince(db, clubId, seq, ({ entries }) =>
      entries.some((one) => one.kind === kind && one.id === id),
    );
    throw new Refusal('conflict', 'seq', `This cannot be undone: the ${name} was changed again since${by}.`);
  }
  const edits = change.entries.map(({ kind, id, before }) => ({ kind, id, after: before }));
  return commitChange(db, writer, edits, seq);
}

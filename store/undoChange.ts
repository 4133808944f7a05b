import type { Kysely } from 'kysely';
import { kindNames } from '#contract/records/allKinds.ts';
import { recordName } from '#contract/records/recordName.ts';
import { byWhomSince } from './byWhomSince.ts';
import { type Change, changeAt } from './changeLog.ts';
import { checkShape } from './checks.ts';
import { commitChange } from './commitChange.ts';
import { kindTable } from './kindTable.ts';
import { Refusal } from './Refusal.ts';
import type { Tables } from './schema.ts';
import { undoSets, whySetsNotUndone } from './strikeSets.ts';
import type { Writer } from './Writer.ts';

/** Takes a change back by writing its opposite. Every record that it touched must still be as it left it. */
export async function undoChange(db: Kysely<Tables>, writer: Writer, seq: number): Promise<Change> {
  const { clubId } = writer;
  const change = await changeAt(db, clubId, seq);
  if (!change) throw new Refusal('missing', 'seq', `There is no change number ${seq} to undo.`);
  const whyNot = await whyNotUndone(db, clubId, change);
  if (whyNot !== null) throw new Refusal('conflict', 'seq', whyNot);
  if (change.sets) return undoSets(db, writer, seq, change.sets);
  const edits = change.entries.map(({ kind, id, before }) => ({ kind, id, after: before }));
  return commitChange(db, writer, edits, seq);
}

/** Why a change cannot be taken back as things are, as one sentence; null: nothing that it touched stands against it. */
export async function whyNotUndone(
  db: Kysely<Tables>,
  clubId: string,
  { seq, entries, sets, replaced }: Change,
): Promise<string | null> {
  if (replaced && entries.length === 0 && !sets)
    return `Change number ${seq} replaced the whole club by another; what was there before, if it was kept, is among the copies of the club.`;
  if (sets) return whySetsNotUndone(db, clubId, seq, sets);
  if (entries.length === 0) return `Change number ${seq} touched no record; there is nothing to undo.`;
  for (const kind of kindNames) {
    const ofKind = entries.filter((entry) => entry.kind === kind);
    if (ofKind.length === 0) continue;
    const there = await kindTable(db, clubId, kind).among(ofKind.map(({ id }) => id));
    const now = new Map(there.map((record) => [record.id, record]));
    for (const { id, before, after } of ofKind) {
      const touched = after ?? before;
      // Read by today's shape: the log may be older than a field that has a default.
      const left = after && checkShape(kind, after);
      if (JSON.stringify(now.get(id) ?? null) === JSON.stringify(left) || !touched) continue;
      const by = await byWhomSince(db, clubId, seq, (change) =>
        change.entries.some((one) => one.kind === kind && one.id === id),
      );
      return `This cannot be undone: the ${recordName(kind, touched)} was changed again since${by}.`;
    }
  }
  return null;
}

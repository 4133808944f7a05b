import type { Kysely } from 'kysely';
import { type KindName, kindNames, type RecordOf } from '#contract/records/allKinds.ts';
import { appendChange, type Change, type ChangeEntry } from './changeLog.ts';
import { checkClubStays, checkFaults, checkShape, checkUnused } from './checks.ts';
import { clubToday } from './clubToday.ts';
import { kindTable } from './kindTable.ts';
import type { Tables } from './schema.ts';
import type { Writer } from './Writer.ts';

/** What one record is to become: its new content, or null when it goes. */
export interface Edit<K extends KindName = KindName> {
  kind: K;
  id: string;
  after: RecordOf<K> | null;
}

/**
 * Carries out edits as one change: all of them, checked against everything else the club has, or none. To be called within a
 * transaction. Edits that would change nothing are passed over; a change of which nothing is left still gets its number, so that
 * its undo cannot take back another.
 */
export async function commitChange(
  db: Kysely<Tables>,
  writer: Writer,
  edits: Edit[],
  undoes: number | null = null,
): Promise<Change> {
  const { clubId } = writer;
  const entries = (await entriesOf(db, clubId, edits)).filter(differs);
  entries.forEach(checkClubStays);
  // An undo brings back what was there, whatever its date.
  await checkFaults(db, clubId, entries, undoes === null ? await clubToday(db, clubId) : null);
  const change = await appendChange(db, writer, { entries, undoes });
  // First all that was there goes, then all that is to be comes: two records may swap their labels.
  for (const { kind, id, before } of entries) {
    if (before) await kindTable(db, clubId, kind).markRemoved(id, change.seq);
  }
  for (const kind of kindNames) {
    for (const entry of entries) {
      if (entry.kind === kind && entry.after) await kindTable(db, clubId, kind).put(entry.after);
    }
  }
  await checkUnused(db, clubId, entries);
  return change;
}

async function entriesOf(db: Kysely<Tables>, clubId: string, edits: Edit[]): Promise<ChangeEntry[]> {
  const entries: ChangeEntry[] = [];
  for (const kind of kindNames) {
    const ofKind = edits.filter((edit) => edit.kind === kind);
    const ids = ofKind.map((edit) => edit.id);
    const before = new Map(
      (await kindTable(db, clubId, kind).among(ids)).map((record) => [record.id, record]),
    );
    for (const { id, after } of ofKind) {
      entries.push({ kind, id, before: before.get(id) ?? null, after: after && checkShape(kind, after) });
    }
  }
  return entries;
}

function differs({ before, after }: ChangeEntry): boolean {
  return JSON.stringify(before) !== JSON.stringify(after);
}

import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { archiveFormat, archiveVersion } from './archiveShape.ts';
import type { FormerRecord } from './formerRecord.ts';

/** What an archive holds. */
export interface ArchiveContent {
  records: ClubRecords;
  prescriptions: Prescription[];
  sets: LoggedSet[];
  former: FormerRecord[];
}

/**
 * The whole club as one JSON text, a record a line. The same content always gives the same bytes: kinds in their order,
 * records by id, the names within a record by the alphabet.
 */
export function writeArchive({ records, prescriptions, sets, former }: ArchiveContent): string {
  const kinds = kindNames.map((kind) => `"${kind}": ${lines(records[kind].toSorted(byId))}`);
  const solved = prescriptions.toSorted((a, b) => compare(a.dayId, b.dayId) || a.number - b.number);
  const gone = former.toSorted((a, b) => compare(a.kind, b.kind) || byId(a.record, b.record));
  return [
    '{',
    `"format": ${JSON.stringify(archiveFormat)},`,
    `"version": ${archiveVersion},`,
    `"records": {\n${kinds.join(',\n')}\n},`,
    `"prescriptions": ${lines(solved)},`,
    `"sets": ${lines(sets.toSorted(byId))},`,
    `"former": ${lines(gone)}`,
    '}\n',
  ].join('\n');
}

function lines(items: unknown[]): string {
  return items.length === 0
    ? '[]'
    : `[\n${items.map((item) => JSON.stringify(inOrder(item))).join(',\n')}\n]`;
}

/** The same value with the names of every object sorted. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).toSorted(([a], [b]) => compare(a, b));
  return Object.fromEntries(entries.map(([name, inner]) => [name, inOrder(inner)]));
}

function byId(a: { id: string }, b: { id: string }): number {
  return compare(a.id, b.id);
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

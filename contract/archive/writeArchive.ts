import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import { compareText } from '#core/numeric/compareText.ts';
import { archiveFormat, archiveVersion } from './archiveShape.ts';
import type { FormerRecord } from './formerRecord.ts';

/** What an archive holds. */
export interface ArchiveContent {
  records: ClubRecords;
  prescriptions: Prescription[];
  takenPlans: TakenPlan[];
  sets: LoggedSet[];
  former: FormerRecord[];
}

/**
 * The whole club as one JSON text, a record a line. The same content always gives the same bytes: kinds in their order,
 * records by id, the names within a record by the alphabet.
 */
export function writeArchive(content: ArchiveContent): string {
  return [...archivePieces(content)].join('');
}

/** The same in pieces, one after the other: a million sets are more than one text can be. */
export function* archivePieces({
  records,
  prescriptions,
  takenPlans,
  sets,
  former,
}: ArchiveContent): Generator<string> {
  const solved = prescriptions.toSorted((a, b) => compareText(a.dayId, b.dayId) || a.number - b.number);
  const taken = takenPlans.toSorted((a, b) => compareText(a.seasonId, b.seasonId) || a.number - b.number);
  const gone = former.toSorted((a, b) => compareText(a.kind, b.kind) || byId(a.record, b.record));
  yield `{\n"format": ${JSON.stringify(archiveFormat)},\n"version": ${archiveVersion},\n"records": {\n`;
  for (const [i, kind] of kindNames.entries()) {
    yield `${i === 0 ? '' : ',\n'}"${kind}": `;
    yield* lines(records[kind].toSorted(byId));
  }
  yield '\n},\n"prescriptions": ';
  yield* lines(solved);
  yield ',\n"takenPlans": ';
  yield* lines(taken);
  yield ',\n"sets": ';
  yield* lines(sets.toSorted(byId));
  yield ',\n"former": ';
  yield* lines(gone);
  yield '\n}\n';
}

function* lines(items: readonly unknown[]): Generator<string> {
  if (items.length === 0) return yield '[]';
  for (let i = 0; i < items.length; i += linesInPiece) {
    const some = items.slice(i, i + linesInPiece).map((item) => JSON.stringify(inOrder(item)));
    yield `${i === 0 ? '[\n' : ',\n'}${some.join(',\n')}`;
  }
  yield '\n]';
}

const linesInPiece = 1000;

/** The same value with the names of every object sorted. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).toSorted(([a], [b]) => compareText(a, b));
  return Object.fromEntries(entries.map(([name, inner]) => [name, inOrder(inner)]));
}

function byId(a: { id: string }, b: { id: string }): number {
  return compareText(a.id, b.id);
}

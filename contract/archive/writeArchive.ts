import { kindNames } from '#contract/records/allKinds.ts';
import type { Long } from '#contract/records/long.ts';
import { compareText } from '#core/numeric/compareText.ts';
import type { ArchiveContent } from './archiveContent.ts';
import { archiveFormat, archiveVersion } from './archiveShape.ts';

/**
 * The whole club as one JSON text, a record a line. The same content always gives the same bytes: kinds in their order,
 * records by id, plans and the log as they come, the names within each by the alphabet.
 */
export async function writeArchive(content: ArchiveContent): Promise<string> {
  const pieces: string[] = [];
  for await (const piece of archivePieces(content)) pieces.push(piece);
  return pieces.join('');
}

/** The same in pieces, one after the other: a million sets are more than one text can be. */
export async function* archivePieces({
  records,
  prescriptions,
  takenPlans,
  sets,
  former,
}: ArchiveContent): AsyncGenerator<string, void> {
  const gone = former.toSorted((a, b) => compareText(a.kind, b.kind) || byId(a.record, b.record));
  yield `{\n"format": ${JSON.stringify(archiveFormat)},\n"version": ${archiveVersion},\n"records": {\n`;
  for (const [i, kind] of kindNames.entries()) {
    yield `${i === 0 ? '' : ',\n'}"${kind}": `;
    yield* lines(records[kind].toSorted(byId));
  }
  yield '\n},\n"prescriptions": ';
  yield* lines(prescriptions);
  yield ',\n"takenPlans": ';
  yield* lines(takenPlans);
  yield ',\n"sets": ';
  yield* lines(sets);
  yield ',\n"former": ';
  yield* lines(gone);
  yield '\n}\n';
}

async function* lines(items: Long<object>): AsyncGenerator<string, void> {
  let [piece, isFirst] = ['[', true];
  for await (const item of items) {
    piece += `${isFirst ? '' : ','}\n${JSON.stringify(inOrder(item))}`;
    isFirst = false;
    if (piece.length < lettersInPiece) continue;
    yield piece;
    piece = '';
  }
  yield `${piece}${isFirst ? '' : '\n'}]`;
}

const lettersInPiece = 250_000;

/** The same value with the names of every object sorted: the value itself where they are. */
function inOrder(value: object): object {
  if (Array.isArray(value)) {
    const items = value.map(insideInOrder);
    return items.some((item, i) => item !== value[i]) ? items : value;
  }
  let [isInOrder, last] = [true, ''];
  const entries: [string, unknown][] = [];
  for (const [name, inside] of Object.entries(value)) {
    const ordered = insideInOrder(inside);
    isInOrder &&= ordered === inside && last <= name;
    last = name;
    entries.push([name, ordered]);
  }
  return isInOrder ? value : Object.fromEntries(entries.sort(([a], [b]) => compareText(a, b)));
}

function insideInOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const known = alreadyOrdered.get(value) ?? inOrder(value);
  alreadyOrdered.set(value, known);
  return known;
}

/** Sets of a log share what alike ones have in common. */
const alreadyOrdered = new WeakMap<object, object>();

function byId(a: { id: string }, b: { id: string }): number {
  return compareText(a.id, b.id);
}

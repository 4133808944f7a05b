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
function inOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    const items = value.map(inOrder);
    return items.some((item, i) => item !== value[i]) ? items : value;
  }
  const names = Object.keys(value);
  const inside = names.map((name) => inOrder(Reflect.get(value, name)));
  const isInOrder = names.every(
    (name, i) => inside[i] === Reflect.get(value, name) && (i === 0 || names[i - 1]! < name),
  );
  if (isInOrder) return value;
  const entries = names.map((name, i) => [name, inside[i]] as const);
  return Object.fromEntries(entries.sort(([a], [b]) => compareText(a, b)));
}

function byId(a: { id: string }, b: { id: string }): number {
  return compareText(a.id, b.id);
}

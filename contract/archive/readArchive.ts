import { cutLists, type TextPieces, Uncut } from '#contract/json/cutLists.ts';
import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import type { ArchiveContent } from './archiveContent.ts';
import type { FormerRecord } from './formerRecord.ts';
import { ArchiveFrame } from './readFrame.ts';
import { type ArchiveProblem, isOpened, lists, nameOf, type Problems, readItem } from './readItem.ts';

/** Of a file in which everything is wrong, so many places are named. */
const mostProblems = 20;
/** Beside plans and the log, which are read anew whenever they are gone through, everything is held at once. */
const mostHeld = 1_000_000;

/**
 * The content of an archive, or what is wrong with it, in the order of the file. Everything in it is looked at here, one entry at a
 * time; the pieces are read again for each long list, and are expected to be the same then.
 */
export function readArchive(pieces: TextPieces): { content: ArchiveContent } | Problems {
  try {
    return looked(pieces);
  } catch (error) {
    if (!(error instanceof Uncut)) throw error;
    const message = `The file ${error.message}, so it is no club archive.`;
    return { problems: [{ field: '', message, line: error.line }] };
  }
}

function looked(pieces: TextPieces): { content: ArchiveContent } | Problems {
  const frame = new ArchiveFrame();
  const held = new Map([...lists].flatMap(([name, { isHeld }]) => (isHeld ? [[name, [] as unknown[]]] : [])));
  const problems: ArchiveProblem[] = [];
  let heldCount = 0;
  for (const part of cutLists(pieces, isOpened)) {
    if (part.index === null) {
      const wrong = frame.take(part);
      if (wrong) return { problems: [wrong] };
      continue;
    }
    const list = lists.get(nameOf(part.path));
    // What is in a list that nobody knows does not matter: the list itself is refused.
    if (list === undefined) continue;
    const read = readItem(part, list);
    if ('problems' in read) problems.push(...read.problems);
    if (problems.length >= mostProblems) break;
    if (!list.isHeld || 'problems' in read) continue;
    held.get(nameOf(part.path))!.push(read.item);
    if (++heldCount > mostHeld) {
      const message = `The file holds more than ${mostHeld} records beside plans and the log, so it is no club archive.`;
      return { problems: [{ field: part.path.join('.'), message, line: part.line }] };
    }
  }
  const [first, ...others] = [...(problems.length < mostProblems ? frame.problems() : []), ...problems]
    .toSorted((a, b) => a.line - b.line)
    .slice(0, mostProblems);
  if (first) return { problems: [first, ...others] };
  const records = Object.fromEntries(kindNames.map((kind) => [kind, held.get(`records.${kind}`)]));
  return {
    content: {
      records: records as unknown as ClubRecords,
      prescriptions: goneThrough<Prescription>(pieces, 'prescriptions'),
      takenPlans: goneThrough<TakenPlan>(pieces, 'takenPlans'),
      sets: goneThrough<LoggedSet>(pieces, 'sets'),
      former: held.get('former') as FormerRecord[],
    },
  };
}

/** A list of the archive, read again from the file each time. */
function goneThrough<Item>(pieces: TextPieces, name: string): Iterable<Item> {
  const list = lists.get(name)!;
  return {
    *[Symbol.iterator]() {
      let isInside = false;
      for (const part of cutLists(pieces, isOpened)) {
        const isItem = part.index !== null && nameOf(part.path) === name;
        if (isInside && !isItem) return;
        isInside ||= nameOf(part.path) === name;
        if (!isItem) continue;
        const read = readItem(part, list);
        if ('problems' in read) throw new Error(`The archive was changed while it was read: ${name}.`);
        yield read.item as Item;
      }
    },
  };
}

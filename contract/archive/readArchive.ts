import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { allKinds, kindNames } from '#contract/records/allKinds.ts';
import { issueProblem, type Problem } from '#contract/words/shapeProblem.ts';
import { spelt } from '#contract/words/spelt.ts';
import { archiveFormat, archiveVersion, withLog, withTakenPlans } from './archiveShape.ts';
import { jsonLine, lineAt } from './jsonLine.ts';
import { readItems } from './readItems.ts';
import type { ArchiveContent } from './writeArchive.ts';

/** What is wrong with an archive, and the line on which it stands, as an editor counts it. */
export interface ArchiveProblem extends Problem {
  line: number;
}

/** Of a file in which everything is wrong, so many places are named. */
const mostProblems = 20;
/** A million sets have no more, with all that belongs to them. */
const mostArchived = 40_000_000;

/** The content of an archive, or what is wrong with it, in the order of the file. */
export function readArchive(
  text: string,
): { content: ArchiveContent } | { problems: [ArchiveProblem, ...ArchiveProblem[]] } {
  const beyond = beyondBounds(text, mostArchived);
  if (beyond !== null)
    return { problems: [{ field: '', message: `The file ${beyond}, so it is no club archive.`, line: 1 }] };
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch (error) {
    const line = lineAt(text, placeOf(error) ?? text.trimEnd().length);
    const message = `The file is not valid JSON at line ${line}, so it is no club archive.`;
    return { problems: [{ field: '', message, line }] };
  }
  const wrong = (field: string, message: string) => ({
    problems: [{ field, message, line: jsonLine(text, [field]) }] as [ArchiveProblem],
  });
  const { format, version } = Object(document) as { format?: unknown; version?: unknown };
  if (format !== archiveFormat) {
    return wrong('format', `The file is not a "${archiveFormat}".`);
  }
  if (!isKnownVersion(version)) {
    const message = `The archive has version ${spelt(version)}; this program reads versions 1 to ${archiveVersion}.`;
    return wrong('version', message);
  }
  const today = asWrittenToday(Object(document), version);
  const read = readItems(today, mostProblems);
  if ('issues' in read) {
    const [first, ...others] = read.issues
      .map((issue) => ({ ...issueProblem(issue, today), line: jsonLine(text, issue.path) }))
      .toSorted((a, b) => a.line - b.line);
    return first ? { problems: [first, ...others] } : wrong('', 'The archive cannot be read.');
  }
  return read;
}

/** Where the parser stopped, as far as it says so. */
function placeOf(error: unknown): number | null {
  const place = error instanceof SyntaxError ? /position (\d+)/.exec(error.message)?.[1] : undefined;
  return place === undefined ? null : Number(place);
}

function isKnownVersion(version: unknown): version is number {
  return Number.isInteger(version) && Number(version) >= 1 && Number(version) <= archiveVersion;
}

/** An archive of version 1 knows no log, and none of the kinds that came later. */
function asWrittenToday(document: { records?: unknown }, version: number): object {
  const later = kindNames.filter((kind) => allKinds[kind].facts.sinceArchive > version);
  const none = Object.fromEntries(later.map((kind) => [kind, []]));
  const { records } = document;
  return {
    ...document,
    version: archiveVersion,
    records: typeof records === 'object' ? { ...none, ...records } : records,
    ...(version < withTakenPlans ? { takenPlans: [] } : {}),
    ...(version < withLog ? { sets: [], former: [] } : {}),
  };
}

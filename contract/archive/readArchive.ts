import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Problem, shapeProblem } from '#contract/words/shapeProblem.ts';
import { archiveFormat, archiveShape, archiveVersion } from './archiveShape.ts';
import type { FormerRecord } from './formerRecord.ts';
import type { ArchiveContent } from './writeArchive.ts';

/** The content of an archive, or the first thing that is wrong with it. */
export function readArchive(text: string): { content: ArchiveContent } | { problem: Problem } {
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch {
    return { problem: { field: '', message: 'The file is not valid JSON, so it is no club archive.' } };
  }
  const { format, version } = Object(document) as { format?: unknown; version?: unknown };
  if (format !== archiveFormat) {
    return { problem: { field: 'format', message: `The file is not a "${archiveFormat}".` } };
  }
  if (version !== 1 && version !== archiveVersion) {
    const message = `The archive has version ${JSON.stringify(version)}; this program reads versions 1 to ${archiveVersion}.`;
    return { problem: { field: 'version', message } };
  }
  const today = version === 1 ? withLog(Object(document)) : document;
  const read = archiveShape.safeParse(today);
  if (!read.success) return { problem: shapeProblem(read.error, today) };
  const { records, prescriptions, sets, former } = read.data;
  const content = { records: records as unknown as ClubRecords, prescriptions, sets };
  return { content: { ...content, former: former as FormerRecord[] } };
}

/** An archive of version 1 knows no log. */
function withLog(document: object): object {
  return { ...document, version: archiveVersion, sets: [], former: [] };
}

import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type Problem, shapeProblem } from '#contract/words/shapeProblem.ts';
import { archiveFormat, archiveShape, archiveVersion } from './archiveShape.ts';
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
  if (version !== archiveVersion) {
    const message = `The archive has version ${JSON.stringify(version)}; this program reads version ${archiveVersion}.`;
    return { problem: { field: 'version', message } };
  }
  const read = archiveShape.safeParse(document);
  if (!read.success) return { problem: shapeProblem(read.error, document) };
  const { records, prescriptions } = read.data;
  return { content: { records: records as unknown as ClubRecords, prescriptions } };
}

import type { ClubRecords, KindName, RecordOf } from './allKinds.ts';
import type { Fault } from './Fault.ts';
import { nextVersion } from './nextVersion.ts';
import type { KeptMethod } from './season.ts';

/**
 * Under the id and version of a method stands one document: two tablets that change the same one at once would else keep two that are
 * called alike. Asked of what is new; a club of before may hold two, and keeps them.
 */
export function versionFault(
  kind: KindName,
  record: RecordOf<KindName>,
  club: Readonly<Partial<ClubRecords>>,
): Fault | null {
  if (kind !== 'method') return null;
  const { id: own, methodDocument } = record as KeptMethod;
  const { id, title, version } = methodDocument;
  const others = club.method!.filter((one) => one.id !== own && one.methodDocument.id === id);
  if (others.every((one) => one.methodDocument.version !== version)) return null;
  const next = nextVersion(others, methodDocument);
  return {
    field: 'methodDocument.version',
    message: `methodDocument.version is ${version}; the club keeps another version ${version} of "${title}" already, so that this one must be version ${next}.`,
    isClash: true,
  };
}

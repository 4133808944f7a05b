import { allKinds, type ClubRecords, type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { Answer } from '#contract/records/kind.ts';

/** All of the club itself that an answer rests on, in an order of its own: as the kinds say that they feed it. */
export function clubBasis(records: ClubRecords, answer: Answer): object[] {
  return feeding(answer)
    .filter((kind) => !isOfLifter(kind))
    .map((kind) => fed(kind, records[kind], answer));
}

/** What it rests on of some lifters, likewise. */
export function lifterBasis(records: ClubRecords, answer: Answer, lifterIds: ReadonlySet<string>): object[] {
  return feeding(answer)
    .filter(isOfLifter)
    .map((kind) => {
      const own: readonly { id: string }[] = records[kind].filter((record) =>
        lifterIds.has(lifterOf(record)),
      );
      return fed(kind, own, answer);
    });
}

/** A kind that feeds nothing is no part of the basis, so that a new one leaves the marks of what is kept as they were. */
function feeding(answer: Answer): KindName[] {
  return kindNames.filter((kind) => allKinds[kind].facts.feeds[answer] !== undefined);
}

/** Kinds of which each record is a lifter, or part of one. */
export function isOfLifter(kind: KindName): boolean {
  return kind === 'lifter' || 'lifterId' in allKinds[kind].facts.belongsTo;
}

/** The id of the lifter that a record of such a kind is, or belongs to. */
export function lifterOf(record: { id: string }): string {
  return 'lifterId' in record ? String(record.lifterId) : record.id;
}

/** The fields that feed an answer, records by their id. */
function fed(kind: KindName, records: readonly { id: string }[], answer: Answer): object[] {
  return records.toSorted((a, b) => (a.id < b.id ? -1 : 1)).map((record) => fedOf(kind, record, answer));
}

/** What of one record an answer rests on. */
export function fedOf(kind: KindName, record: { id: string }, answer: Answer): object {
  const fields = allKinds[kind].facts.feeds[answer] ?? [];
  const isFed = (name: string) =>
    name === 'id' || (fields === 'all' ? name !== 'note' : fields.includes(name));
  return Object.fromEntries(Object.entries(record).filter(([name]) => isFed(name)));
}

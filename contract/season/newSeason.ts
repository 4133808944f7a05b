import { z } from 'zod';
import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { localDate, recordId } from '#contract/records/kind.ts';
import { type Method, method } from '#contract/records/method.ts';
import { meet, season, seasonEntry } from '#contract/records/season.ts';

/** What a season is made from at once: a method that the club keeps or one that comes along, meets that it has and new ones, and who takes part. */
export const newSeason = z.strictObject({
  title: season.shape.shape.title,
  fromOn: localDate,
  method: z.union([z.strictObject({ id: recordId }), z.strictObject({ document: method })]),
  meetIds: z.array(recordId).max(4).default([]),
  newMeets: z
    .array(meet.shape.pick({ title: true, date: true }))
    .max(4)
    .default([]),
  lifterIds: z.array(recordId).min(1).max(200),
});
export type NewSeason = z.infer<typeof newSeason>;

/** Lifters who join a season that there is, all of them for the same meets. */
export const moreLifters = newSeason
  .pick({ lifterIds: true })
  .extend({ meetIds: seasonEntry.shape.shape.meetIds });
export type MoreLifters = z.infer<typeof moreLifters>;

/** A record with its kind. */
export type OfKind = { [K in KindName]: { kind: K; record: RecordOf<K> } }[KindName];

/**
 * Every record of a new season, the season's own id with them; everybody trains for the same meets. A method that comes along and that the club keeps
 * already, word for word, is the club's own.
 */
export function recordsOfNewSeason(
  { title, fromOn, method: given, meetIds, newMeets, lifterIds }: NewSeason,
  { method: kept }: Pick<ClubRecords, 'method'>,
  newId: () => string,
): { seasonId: string; records: OfKind[] } {
  const seasonId = newId();
  const meets = newMeets.map((one) => ({ ...one, id: newId(), note: '' }));
  const own =
    'id' in given ? given : kept.find(({ methodDocument }) => isSame(methodDocument, given.document));
  const methodId = own?.id ?? newId();
  const all = [...meetIds, ...meets.map(({ id }) => id)];
  return {
    seasonId,
    records: [
      ...('document' in given && own === undefined
        ? [{ kind: 'method' as const, record: { id: methodId, methodDocument: given.document } }]
        : []),
      ...meets.map((record) => ({ kind: 'meet' as const, record })),
      { kind: 'season', record: { id: seasonId, title, methodId, fromOn, note: '' } },
      ...entriesOf(seasonId, { lifterIds, meetIds: all }, newId),
    ],
  };
}

/** Both as the shape reads them, which puts fields in one order. */
function isSame(one: Method, other: Method): boolean {
  return JSON.stringify(method.parse(one)) === JSON.stringify(other);
}

/** The records by which lifters take part in a season. */
export function entriesOf(
  seasonId: string,
  { lifterIds, meetIds }: MoreLifters,
  newId: () => string,
): OfKind[] {
  return lifterIds.map((lifterId) => ({
    kind: 'seasonEntry' as const,
    record: { id: newId(), seasonId, lifterId, meetIds, classes: [] },
  }));
}

import { z } from 'zod';
import { allKinds, type ClubRecords, type KindName, kindNames } from '#contract/records/allKinds.ts';
import { dateOf } from '#contract/records/dateOf.ts';
import { localDate } from '#contract/records/kind.ts';
import type { Long } from '#contract/records/long.ts';
import type { ArchiveContent } from './archiveContent.ts';

const count = z.number().int().min(0);
const counts = Object.fromEntries(kindNames.map((kind) => [kind, count])) as Record<KindName, typeof count>;

/** What a club holds, seen from outside: enough to tell two of them apart, and the older of two. */
export const archiveLook = z.strictObject({
  name: z.string(),
  counts: z.strictObject({ ...counts, prescriptions: count, takenPlans: count, sets: count }),
  /** The newest date on which anything in it was measured, done, worked out or logged; null: nothing has a date. */
  newestOn: localDate.nullable(),
});
export type ArchiveLook = z.infer<typeof archiveLook>;

/** How many there are in each of the lists that may be long, and the last moment that any of them names; null: none. */
export type CountedLists = Record<
  'prescriptions' | 'takenPlans' | 'sets',
  { count: number; newestAt: string | null }
>;

/** Looks at what an archive holds, all of which is read for that. */
export async function lookAt({
  records,
  prescriptions,
  takenPlans,
  sets,
}: ArchiveContent): Promise<ArchiveLook> {
  return lookOf(records, {
    prescriptions: await counted(prescriptions, ({ solvedAt }) => solvedAt),
    takenPlans: await counted(takenPlans, ({ takenAt }) => takenAt),
    sets: await counted(sets, ({ loggedAt }) => loggedAt),
  });
}

/** The same of whoever has counted already. */
export function lookOf(records: ClubRecords, lists: CountedLists): ArchiveLook {
  const dates = [
    ...kindNames.flatMap((kind) => datesOf(kind, records[kind])),
    ...Object.values(lists).flatMap(({ newestAt }) => newestAt?.slice(0, dayLength) ?? []),
  ];
  const numbers = Object.fromEntries(kindNames.map((kind) => [kind, records[kind].length]));
  return {
    name: records.club[0]?.name ?? '',
    counts: {
      ...(numbers as Record<KindName, number>),
      prescriptions: lists.prescriptions.count,
      takenPlans: lists.takenPlans.count,
      sets: lists.sets.count,
    },
    newestOn: dates.reduce<string | null>(
      (newest, on) => (newest !== null && newest > on ? newest : on),
      null,
    ),
  };
}

async function counted<Item>(list: Long<Item>, at: (item: Item) => string) {
  let [count, newestAt]: [number, string | null] = [0, null];
  for await (const item of list) {
    count += 1;
    if (newestAt === null || at(item) > newestAt) newestAt = at(item);
  }
  return { count, newestAt };
}

/** When what these records tell was measured, done or born; nothing where it may lie ahead. */
function datesOf(kind: KindName, records: readonly object[]): string[] {
  return allKinds[kind].facts.date?.isPast ? records.flatMap((record) => dateOf(kind, record) ?? []) : [];
}

/** Of "2026-11-25T17:00:00Z" the day. */
const dayLength = 10;

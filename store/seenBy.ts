import type { FormerRecord } from '#contract/archive/formerRecord.ts';
import type { ClubChanges } from '#contract/changes/clubState.ts';
import type { Who } from '#contract/changes/who.ts';
import { type ClubRecords, type KindName, kindNames } from '#contract/records/allKinds.ts';
import type { Change, ChangeEntry } from './changeLog.ts';
import type { MayRead, Readable } from './mayRead.ts';

/** What a club keeps as one person sees it, by a rule for one thing at a time. */
export function seenBy(who: Who, rule: MayRead) {
  const one = <Kept extends object>(kind: Readable, kept: Kept | null) => kept && rule(who, kind, kept);
  const all = <Kept extends object>(kind: Readable, kept: readonly Kept[]) =>
    kept.flatMap((each) => one(kind, each) ?? []);
  const entry = ({ kind, id, before, after }: ChangeEntry): ChangeEntry[] => {
    const seen = { kind, id, before: one(kind, before), after: one(kind, after) };
    return seen.before || seen.after ? [seen] : [];
  };
  return {
    one,
    all,
    /** Of a list too long to be held at once. */
    each: <Kept extends object>(kind: Readable, list: () => AsyncIterable<Kept>): AsyncIterable<Kept> => ({
      async *[Symbol.asyncIterator]() {
        for await (const kept of list()) {
          const seen = one(kind, kept);
          if (seen) yield seen;
        }
      },
    }),
    club(records: ClubRecords): ClubRecords {
      const lists = kindNames.map((kind) => [kind, all<object>(kind, records[kind])]);
      return Object.fromEntries(lists) as ClubRecords;
    },
    change: (change: Change): Change => ({ ...change, entries: change.entries.flatMap(entry) }),
    /** What they may not see of what was put is gone for them. */
    changes({ put, removed, sets, ...rest }: ClubChanges): ClubChanges {
      const news: Partial<Record<KindName, { id: string }[]>> = {};
      const gone = { ...removed };
      for (const kind of kindNames) {
        const given: { id: string }[] = put[kind] ?? [];
        const seen = all(kind, given);
        const ids = new Set(seen.map(({ id }) => id));
        const hidden = given.filter(({ id }) => !ids.has(id)).map(({ id }) => id);
        if (seen.length > 0) news[kind] = seen;
        if (hidden.length > 0) gone[kind] = [...(gone[kind] ?? []), ...hidden];
      }
      return {
        ...rest,
        put: news as ClubChanges['put'],
        removed: gone,
        sets: sets && all('loggedSet', sets),
      };
    },
    former: (gear: readonly FormerRecord[]): FormerRecord[] =>
      gear.flatMap(({ kind, record }) => {
        const seen = one<object>(kind, record);
        return seen ? [{ kind, record: seen } as FormerRecord] : [];
      }),
  };
}

import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';

/** A club whose records tell which of their fields are read: `best.setup`. */
export function watchedClub(club: ClubRecords): { records: ClubRecords; read: Set<string> } {
  const read = new Set<string>();
  const watched = (kind: string, record: object) =>
    new Proxy(record, {
      get(target, name) {
        if (typeof name === 'string' && name in target) read.add(`${kind}.${name}`);
        return Reflect.get(target, name) as unknown;
      },
    });
  const lists = kindNames.map((kind) => [kind, club[kind].map((record) => watched(kind, record))]);
  return { records: Object.fromEntries(lists) as ClubRecords, read };
}

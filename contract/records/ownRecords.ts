import {
  allKinds,
  type ClubRecords,
  type KindName,
  type KindOwnedBy,
  kindNames,
  type RecordOf,
} from './allKinds.ts';
import { dateOf } from './dateOf.ts';

/** The names of the kinds that belong to records of that kind. */
export function kindsOwnedBy<Owner extends KindName>(owner: Owner): KindOwnedBy<Owner>[] {
  return kindNames.filter((kind) => ownerFields(kind, owner).length > 0) as KindOwnedBy<Owner>[];
}

/** All that belongs to one record, by kind: what bears a date newest first, the rest as it was written down. */
export type OwnRecords<Owner extends KindName> = { [K in KindOwnedBy<Owner>]: RecordOf<K>[] };

/** Gathers what belongs to the record of that kind and id. */
export function ownRecords<Owner extends KindName>(
  club: ClubRecords,
  owner: Owner,
  id: string,
): OwnRecords<Owner> {
  const own = kindsOwnedBy(owner).map((kind) => {
    const fields = ownerFields(kind, owner);
    const records: readonly object[] = club[kind];
    const on = (record: object) => dateOf(kind, record) ?? '';
    return [
      kind,
      records
        .filter((record) => fields.some((field) => Reflect.get(record, field) === id))
        .toSorted((a, b) => on(b).localeCompare(on(a))),
    ];
  });
  return Object.fromEntries(own);
}

function ownerFields(kind: KindName, owner: KindName): string[] {
  return Object.entries(allKinds[kind].facts.belongsTo).flatMap(([field, to]) => (to === owner ? field : []));
}

import { allKinds, type KindName, kindNames, type RecordOf } from './allKinds.ts';

/** A place in one kind of record that holds the id of another. */
export interface Reference {
  from: KindName;
  /** Field names joined by dots; `[]` after a name means every item of that list. */
  path: string;
  to: KindName;
  /** True: the record is part of the other and goes with it. False: it uses the other, which therefore must stay. */
  belongs: boolean;
}

/** All of them, as the kinds declare them. */
export const references: readonly Reference[] = kindNames.flatMap((from) => {
  const { belongsTo, uses } = allKinds[from].facts;
  const of = (places: Readonly<Record<string, KindName>>, belongs: boolean) =>
    Object.entries(places).map(([path, to]): Reference => ({ from, path, to, belongs }));
  return [...of(belongsTo, true), ...of(uses, false)];
});

export interface Referred {
  reference: Reference;
  /** Where the id stands in this record: `setup.bands[1].hookupId`. */
  field: string;
  id: string;
}

/** Every id of another record that this record holds; places left null are passed over. */
export function referredBy<K extends KindName>(kindName: K, record: RecordOf<K>): Referred[] {
  return references
    .filter((reference) => reference.from === kindName)
    .flatMap((reference) =>
      idsAt(record, reference.path.split('.'), '').map(({ field, id }) => ({ reference, field, id })),
    );
}

function idsAt(value: unknown, steps: string[], at: string): { field: string; id: string }[] {
  const [step, ...rest] = steps;
  if (step === undefined) return typeof value === 'string' ? [{ field: at, id: value }] : [];
  if (typeof value !== 'object' || value === null) return [];
  const name = step.replace('[]', '');
  const field = at === '' ? name : `${at}.${name}`;
  const next: unknown = Reflect.get(value, name);
  if (!step.endsWith('[]')) return idsAt(next, rest, field);
  return Array.isArray(next) ? next.flatMap((item, i) => idsAt(item, rest, `${field}[${i}]`)) : [];
}

import type { KindName, RecordOf } from './allKinds.ts';

/** A place in one kind of record that holds the id of another. */
export interface Reference {
  from: KindName;
  /** Field names joined by dots; `[]` after a name means every item of that list. */
  path: string;
  to: KindName;
  /** True: the record is part of the other and goes with it. False: it uses the other, which therefore must stay. */
  belongs: boolean;
}

export const references: readonly Reference[] = [
  belongs('bandReading', 'bandPairId', 'bandPair'),
  uses('rack', 'barId', 'bar'),
  uses('rack', 'collarPairId', 'collarPair'),
  belongs('anchor', 'rackId', 'rack'),
  belongs('hookup', 'rackId', 'rack'),
  uses('hookup', 'anchorId', 'anchor'),
  belongs('scaleReading', 'hookupId', 'hookup'),
  belongs('scaleReading', 'bandPairId', 'bandPair'),
  belongs('bodyMass', 'lifterId', 'lifter'),
  belongs('liftHeights', 'lifterId', 'lifter'),
  belongs('best', 'lifterId', 'lifter'),
  uses('best', 'setup.rackId', 'rack'),
  uses('best', 'setup.bands[].bandPairId', 'bandPair'),
  uses('best', 'setup.bands[].hookupId', 'hookup'),
  uses('best', 'setup.chains[].chainPairId', 'chainPair'),
  uses('day', 'groups[].places[].lifterId', 'lifter'),
  uses('day', 'groups[].places[].rackId', 'rack'),
  uses('day', 'groups[].places[].byCoach.bands[].bandPairId', 'bandPair'),
  uses('day', 'groups[].places[].byCoach.bands[].hookupId', 'hookup'),
  uses('day', 'groups[].places[].byCoach.chains[].chainPairId', 'chainPair'),
];

/** Kinds that are written down once: a mistaken one is removed and entered anew, never changed. */
export const neverChanged: ReadonlySet<KindName> = new Set<KindName>(['bandReading']);

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

function belongs(from: KindName, path: string, to: KindName): Reference {
  return { from, path, to, belongs: true };
}

function uses(from: KindName, path: string, to: KindName): Reference {
  return { from, path, to, belongs: false };
}

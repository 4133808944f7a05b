import { allKinds, type ClubRecords, type KindName, type RecordOf } from './allKinds.ts';
import { drawnFault } from './drawnFault.ts';
import type { Fault } from './Fault.ts';
import { labelKey } from './labels.ts';
import type { ReaderWrites } from './ReaderWrites.ts';
import { recordName } from './recordName.ts';
import { references, referredBy } from './references.ts';
import { slackFault } from './slackReading.ts';
import { versionFault } from './versionFault.ts';
import { wrongDates } from './wrongDates.ts';

/** The club's records as they will stand, of the kinds that `kindsBeside` names at least. */
export type Beside = Readonly<Partial<ClubRecords>>;

/** The kinds that a record is judged against: its own, those that it names, for bands what was read of them, for lifters what they were drawn for. */
export function kindsBeside(kind: KindName): ReadonlySet<KindName> {
  const named = references.filter(({ from }) => from === kind).map(({ to }) => to);
  return new Set<KindName>([kind, ...named, ...(judgedBy[kind] ?? [])]);
}

/** Kinds of which the record is not a part and which it does not name. */
const judgedBy: Partial<Record<KindName, readonly KindName[]>> = {
  bandPair: ['bandReading'],
  lifter: ['comparison'],
};

/**
 * Everything that a record of the right shape cannot be: by itself, as a change of what it was (`before`; null: it is new), and
 * beside the rest of the club. The one judge of forms, files, archives and the store. `today` null: dates are not looked at,
 * nor versions, as where something is brought back.
 */
export function faultsOf<K extends KindName>(
  kind: K,
  record: RecordOf<K>,
  before: RecordOf<K> | null,
  club: Beside,
  today: string | null,
  writes: ReaderWrites = {},
): Fault[] {
  return [
    againstChange(kind, record, before, club),
    ...(today === null ? [] : wrongDates(kind, record, before, today, writes)),
    ...namesNobody(kind, record, club),
    sameLabel(kind, record, club),
    twin(kind, record, club),
    drawnFault(kind, record, club),
    today === null || before !== null ? null : versionFault(kind, record, club),
    slackFault(
      record,
      before,
      { bandPair: club.bandPair ?? [], bandReading: club.bandReading ?? [] },
      writes,
    ),
  ].filter((fault) => fault !== null);
}

/** Some things happen once: a club has one record of itself, and what was read on a scale is never changed. */
function againstChange<K extends KindName>(
  kind: K,
  record: RecordOf<K>,
  before: RecordOf<K> | null,
  club: Beside,
): Fault | null {
  const { word, facts } = allKinds[kind];
  if (kind === 'club' && club.club!.some(({ id }) => id !== record.id))
    return {
      field: 'id',
      message: 'A club has exactly one record of itself; change that one, by its id.',
      isClash: true,
    };
  const mayChange: readonly string[] = facts.mayChange ?? [];
  const fixed = (state: object) =>
    JSON.stringify(Object.entries(state).filter(([field]) => !mayChange.includes(field)));
  if (before === null || !facts.isFixed || fixed(before) === fixed(record)) return null;
  const but = mayChange.length === 0 ? '' : ` but for its ${mayChange.join(' and ')}`;
  return {
    field: 'id',
    message: `A ${word} is never changed${but}; remove it and enter a new one.`,
    isClash: true,
  };
}

/** Every id belongs to a record that is there. */
function namesNobody<K extends KindName>(kind: K, record: RecordOf<K>, club: Beside): Fault[] {
  return referredBy(kind, record).flatMap(({ reference, field, id }) =>
    looked(club, reference.to).ids.has(id)
      ? []
      : [
          {
            field,
            message: `${field} is "${id}"; the club has no ${allKinds[reference.to].word} with that id.`,
          },
        ],
  );
}

/** No two of a kind share a label. */
function sameLabel<K extends KindName>(kind: K, record: RecordOf<K>, club: Beside): Fault | null {
  const key = labelKey(record);
  if (key === null) return null;
  const bearers = looked(club, kind).bearers.get(key) ?? [];
  if (bearers.every((id) => id === record.id)) return null;
  const message = `The label of ${recordName(kind, record)} is taken; each needs one of its own.`;
  return { field: 'label', message, isClash: true };
}

/** No two of a kind are alike in all the fields that its facts name. */
function twin<K extends KindName>(kind: K, record: RecordOf<K>, club: Beside): Fault | null {
  const { word, facts } = allKinds[kind];
  const fields: readonly string[] | undefined = facts.onlyOneOf;
  if (fields === undefined) return null;
  const others = looked(club, kind).alike.get(alikeKey(record, fields)) ?? [];
  if (others.every((id) => id === record.id)) return null;
  const message = `There is a ${word} with the same ${fields.join(', ')} already; change that one.`;
  return { field: fields.at(-1)!, message, isClash: true };
}

function alikeKey(record: object, fields: readonly string[]): string {
  return JSON.stringify(fields.map((field) => Reflect.get(record, field)));
}

/** What of the records of a kind is looked up for each of them: looked through for each, a file of ten thousand lines took thirteen seconds. */
interface Looked {
  ids: ReadonlySet<string>;
  /** Who bears a label, by its key. */
  bearers: ReadonlyMap<string, readonly string[]>;
  /** Who has the same in the fields of which there is only one, by them. */
  alike: ReadonlyMap<string, readonly string[]>;
}

const known = new WeakMap<readonly RecordOf<KindName>[], Looked>();

/** Lists of records are never changed; another state of the club is another list. */
function looked(club: Beside, kind: KindName): Looked {
  const records: readonly RecordOf<KindName>[] = club[kind]!;
  const fields: readonly string[] = allKinds[kind].facts.onlyOneOf ?? [];
  const found = known.get(records);
  if (found) return found;
  const bearers = new Map<string, string[]>();
  const alike = new Map<string, string[]>();
  for (const record of records) {
    const key = labelKey(record);
    if (key !== null) addTo(bearers, key, record.id);
    if (fields.length > 0) addTo(alike, alikeKey(record, fields), record.id);
  }
  const made = { ids: new Set(records.map(({ id }) => id)), bearers, alike };
  known.set(records, made);
  return made;
}

function addTo(found: Map<string, string[]>, key: string, id: string): void {
  const ids = found.get(key);
  if (ids) ids.push(id);
  else found.set(key, [id]);
}

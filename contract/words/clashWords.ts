import type { Clash } from '#contract/changes/mergeFields.ts';
import { dateText } from './dateText.ts';

/** A clash as a coach reads it: which field, what the other one made of it, what the reader wanted. */
export interface ClashWords {
  field: string;
  theirs: string;
  yours: string;
}

/** `called` names what an id stands for; null where it stands for nothing that has a name. */
export function clashWords(
  { path, theirs, yours }: Clash,
  called: (id: string) => string | null,
): ClashWords {
  const say = (value: unknown) => valueWords(value, called);
  return { field: placeWords(path, called), theirs: say(theirs), yours: say(yours) };
}

/** Ids and fields take turns in a path; the names of lists say nothing beside what stands in them: "Ida Quill, note". */
function placeWords(path: readonly string[], called: (id: string) => string | null): string {
  const ids = path.filter((_, i) => i % 2 === 1);
  const things = ids.flatMap((id) => (id === 'order' ? 'order' : (called(id) ?? [])));
  const last = path.length % 2 === 1 ? [fieldWords(path.at(-1)!)] : [];
  return [...things, ...last].join(', ');
}

/** `barMassKg` is "bar mass (kg)". */
function fieldWords(name: string): string {
  const unit = unitEnds.find(([end]) => name.endsWith(end) && name.length > end.length);
  // A field that names something by its id is read by that thing's name.
  const bare = unit ? name.slice(0, -unit[0].length) : name.replace(/Id$/, '');
  const words = bare.replaceAll(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`).trim();
  return unit ? `${words} (${unit[1]})` : words;
}

const unitEnds = [
  ['Kg', 'kg'],
  ['Mm', 'mm'],
  ['Mps', 'm/s'],
  ['Deg', '°'],
  ['M', 'm'],
  ['N', 'N'],
  ['S', 's'],
] as const;

function valueWords(value: unknown, called: (id: string) => string | null): string {
  if (value === undefined) return 'taken away';
  if (value === null || value === '' || (Array.isArray(value) && value.length === 0)) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return isDate.test(value) ? dateText(value) : (called(value) ?? value);
  if (typeof value === 'number') return String(value);
  const isPlain = Array.isArray(value) && value.every((one) => typeof one !== 'object');
  return isPlain ? value.map((one) => valueWords(one, called)).join(', ') : 'changed otherwise';
}

const isDate = /^\d{4}-\d\d-\d\d$/;

import type { Method } from '#contract/records/method.ts';
import { aimInTurnWords, ofWords } from '#contract/words/aimWords.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { weekdayWord } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import { ownBoxWord } from './depthWords.ts';
import { entryWord, fieldWord } from './methodPlaces.ts';

/** One place where two methods differ, in words, and what stands there in each; null: it is not there. */
export interface MethodDifference {
  where: string;
  before: string | null;
  after: string | null;
}

/** Every field in which two methods differ; what is in one alone is told as a whole. Ids, versions and days are not told. */
export function methodDifferences(before: Method, after: Method): MethodDifference[] {
  const was = placesOf(before, []);
  const is = placesOf(after, []);
  const places = [...new Set([...is.keys(), ...was.keys()])];
  const differing = places.filter((place) => was.get(place) !== is.get(place));
  const inOneAlone = differing.filter((place) => !was.has(place) || !is.has(place));
  const isTold = (place: string) => !inOneAlone.some((whole) => place.startsWith(`${whole}${between}`));
  return differing
    .filter(isTold)
    .map((where) => ({ where, before: was.get(where) ?? null, after: is.get(where) ?? null }));
}

const between = ', ';

/** What stands in each place of a document, by the words of that place; what has a title is a place itself. `field`: the last field on the way. */
function placesOf(value: unknown, where: readonly string[], field = ''): Map<string, string> {
  const place = where.join(between);
  if (Array.isArray(value))
    return merged(
      value.map((each: unknown, at) =>
        // The steps of a week are a list in a list.
        placesOf(each, [...where, entryWord(each, field, at)], Array.isArray(each) ? 'step' : field),
      ),
    );
  if (typeof value === 'object' && value !== null) {
    const own = 'title' in value && place !== '' ? [new Map([[place, 'is there']])] : [];
    const fields = Object.entries(value).filter(([name]) => !untold.includes(name));
    return merged([
      ...own,
      ...fields.map(([name, each]) =>
        placesOf(each, Array.isArray(each) ? where : [...where, fieldWord(name, field)], name),
      ),
    ]);
  }
  return new Map([[place, said(value, field)]]);
}

function merged(maps: readonly Map<string, string>[]): Map<string, string> {
  return new Map(maps.flatMap((map) => [...map]));
}

function said(value: unknown, field: string): string {
  if (value === null) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number' && shares.includes(field)) return percentToTenth(value);
  if (typeof value === 'number') return field === 'weekday' ? weekdayWord(value) : String(value);
  if (typeof value === 'string') return chosen[field]?.find((one) => one.value === value)?.word ?? value;
  return JSON.stringify(value);
}

/** What is chosen from a list, as the list says it. */
const chosen: Readonly<Record<string, readonly { value: string; word: string }[]>> = {
  by: aimInTurnWords,
  of: ofWords,
  basis: basisWords,
  lift: liftWords,
  way: [ownBoxWord],
};

const untold = ['format', 'id', 'version', 'madeOn'];
/** Fields whose number is a share. */
const shares = [
  'shares',
  'barShares',
  'bandShares',
  'bottomShares',
  'lockoutShares',
  'shareOfAim',
  'leastChance',
  'zoneShift',
  'mostRise',
  'friction',
  'places',
];

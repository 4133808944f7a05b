import { expect, test } from 'vitest';
import type { Day, Place } from '#contract/records/day.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { noteFor, placeNotes } from './placeNotes.ts';

function dayWith(change: Partial<Place>): Day {
  const day = structuredClone(twoLifters().day[0]!);
  const [group] = day.groups;
  group!.places = group!.places.map((place, i) => (i === 0 ? { ...place, ...change } : place));
  return day;
}

test('a note typed on two lines is one line on paper, and who has none is left out', () => {
  const day = dayWith({ note: ' Left knee:\n stop at the first pain. ' });
  const [group] = day.groups;
  const [first, second] = group!.places;
  const notes = placeNotes(day);
  expect(notes).toHaveLength(1);
  expect(noteFor(notes, group!.id, first!.lifterId)).toBe('Left knee: stop at the first pain.');
  expect(noteFor(notes, group!.id, second!.lifterId)).toBe('');
});

test('a day of before notes were kept, and no day at all, have none', () => {
  const before = dayWith({});
  delete (before.groups[0]!.places[0] as Partial<Place>).note;
  expect(placeNotes(before)).toEqual([]);
  expect(placeNotes(undefined)).toEqual([]);
});

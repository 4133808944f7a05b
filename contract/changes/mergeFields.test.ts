import { type Arbitrary, array, assert, constantFrom, property, record, uniqueArray } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fields, isSame, mergeFields } from './mergeFields.ts';

const place = record({
  lifterId: constantFrom('a', 'b', 'c', 'd'),
  rackId: constantFrom('1', '2'),
  note: constantFrom('', 'x'),
});
const group = record({
  id: constantFrom('g', 'h', 'i'),
  title: constantFrom('s', 't'),
  places: uniqueArray(place, { selector: ({ lifterId }) => lifterId }),
});
const fields: Arbitrary<Fields> = record({
  title: constantFrom('', 'one', 'two'),
  aims: array(constantFrom(1, 2), { maxLength: 2 }),
  groups: uniqueArray(group, { selector: ({ id }) => id, maxLength: 3 }),
});

const seat = (lifterId: string, note = '') => ({ lifterId, note });
const day = (...places: object[]) => ({ groups: [{ id: 'bench', places }] });

describe('two changes of one record', () => {
  test('are one where only one of them changes anything', () => {
    assert(
      property(fields, fields, (found, changed) => {
        expect(mergeFields(found, found, changed, 'theirs')).toEqual({ merged: changed, clashes: [] });
        expect(mergeFields(found, changed, found, 'yours')).toEqual({ merged: changed, clashes: [] });
      }),
    );
  });

  test('that are alike are one', () => {
    assert(
      property(fields, fields, (found, changed) => {
        expect(mergeFields(found, changed, changed, 'theirs')).toEqual({ merged: changed, clashes: [] });
      }),
    );
  });

  test('clash in the same places whoever comes first', () => {
    assert(
      property(fields, fields, fields, (found, one, other) => {
        const places = (a: Fields, b: Fields) =>
          mergeFields(found, a, b, 'theirs')
            .clashes.map(({ path }) => path.join(' '))
            .toSorted();
        expect(places(one, other)).toEqual(places(other, one));
      }),
    );
  });

  test('leave nothing to ask once one of them was preferred', () => {
    assert(
      property(
        fields,
        fields,
        fields,
        constantFrom('theirs' as const, 'yours' as const),
        (found, theirs, yours, prefer) => {
          const { merged } = mergeFields(found, theirs, yours, prefer);
          const again = mergeFields(theirs, theirs, merged, 'yours');
          expect(again.clashes).toEqual([]);
          expect(isSame(again.merged, merged)).toBe(true);
        },
      ),
    );
  });

  test('of different fields are both kept, and of the same field neither is dropped unsaid', () => {
    const found = { label: 'Long bar', massKg: 20, note: '' };
    expect(mergeFields(found, { ...found, note: 'bent' }, { ...found, massKg: 25 }, 'theirs')).toEqual({
      merged: { label: 'Long bar', massKg: 25, note: 'bent' },
      clashes: [],
    });
    const theirs = { ...found, massKg: 15 };
    const yours = { ...found, massKg: 25, note: 'bent' };
    expect(mergeFields(found, theirs, yours, 'theirs')).toEqual({
      merged: { label: 'Long bar', massKg: 15, note: 'bent' },
      clashes: [{ path: ['massKg'], theirs: 15, yours: 25 }],
    });
    expect(mergeFields(found, theirs, yours, 'yours').merged).toEqual(yours);
  });

  test('of different lifters of a group are both kept, new ones and the order in which they lift too', () => {
    const found = day(seat('a'), seat('b'), seat('c'));
    const theirs = day(seat('c'), seat('a', 'late'), seat('b'));
    const yours = day(seat('a'), seat('d'), seat('b'), seat('c', 'belt'));
    expect(mergeFields(found, theirs, yours, 'theirs')).toEqual({
      merged: day(seat('c', 'belt'), seat('a', 'late'), seat('d'), seat('b')),
      clashes: [],
    });
  });

  test('clash where both move the same lifters otherwise', () => {
    const found = day(seat('a'), seat('b'), seat('c'));
    const theirs = day(seat('b'), seat('a'), seat('c'));
    const yours = day(seat('c'), seat('b'), seat('a'));
    expect(mergeFields(found, theirs, yours, 'theirs')).toEqual({
      merged: theirs,
      clashes: [
        { path: ['groups', 'bench', 'places', 'order'], theirs: ['b', 'a', 'c'], yours: ['c', 'b', 'a'] },
      ],
    });
    expect(mergeFields(found, theirs, yours, 'yours').merged).toEqual(yours);
  });

  test('clash where one removes what the other changes', () => {
    const found = day(seat('a'), seat('b'));
    const removed = day(seat('b'));
    const changed = day(seat('a', 'belt'), seat('b'));
    const path = ['groups', 'bench', 'places', 'a'];
    expect(mergeFields(found, removed, changed, 'theirs')).toEqual({
      merged: removed,
      clashes: [{ path, yours: seat('a', 'belt') }],
    });
    expect(mergeFields(found, changed, removed, 'theirs').clashes).toEqual([
      { path, theirs: seat('a', 'belt') },
    ]);
  });
});

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { nothingBeside } from './archiveContent.ts';
import { readArchive } from './readArchive.ts';
import { writeArchive } from './writeArchive.ts';

const none = Object.fromEntries(kindNames.map((kind) => [kind, []])) as unknown as ClubRecords;
const bars = ['a', 'b', 'c'].map((id) => ({ id, label: `Bar ${id}`, massKg: 20 }));
const document = JSON.parse(
  await writeArchive({ ...nothingBeside, records: { ...none, bar: bars as ClubRecords['bar'] } }),
);
const problemsOf = (text: string) => {
  const read = readArchive([text]);
  return 'problems' in read ? read.problems.map(({ field, line }) => ({ field, line })) : [];
};

test('an archive may name its parts in any order', () => {
  const names = Object.keys(document);
  fc.assert(
    fc.property(fc.shuffledSubarray(names, { minLength: names.length }), (order) => {
      const text = JSON.stringify(Object.fromEntries(order.map((name) => [name, document[name]])));
      const read = readArchive([text]);
      expect('content' in read && read.content.records.bar.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    }),
  );
});

test('a part that stands there twice is refused where it comes again: a reader could not know which is meant', () => {
  const twice = JSON.stringify(document, null, 1).replace(/\n}$/, ',\n "sets": []\n}');
  const line = twice.split('\n').length - 1;
  expect(problemsOf(twice)).toEqual([{ field: 'sets', line }]);
});

test('of a file in which everything is wrong twenty places are named, each by its line', () => {
  const many = Array.from({ length: 50 }, (_, i) => ({ id: `x${i}`, label: 'X', massKg: 'heavy' }));
  const text = JSON.stringify({ ...document, records: { ...document.records, bar: many } }, null, 1);
  const lines = text.split('\n').flatMap((line, i) => (line.includes('heavy') ? [i + 1] : []));
  expect(problemsOf(text)).toEqual(
    lines.slice(0, 20).map((line, i) => ({ field: `records.bar[${i}].massKg`, line })),
  );
});

test('what is no JSON within an entry is told by its line', () => {
  const text = JSON.stringify(document, null, 1).replace('"massKg": 20', '"massKg": 20 twenty');
  const line = text.split('\n').findIndex((one) => one.includes('twenty')) + 1;
  expect(problemsOf(text)).toEqual([{ field: '', line }]);
});

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Cut, cutLists, type TextPieces, Uncut } from './cutLists.ts';

const opens = (path: readonly string[]) => path.length === 0 || (path.length === 1 && path[0] === 'open');
const cut = (pieces: TextPieces) => [...cutLists(pieces, opens)];

/** A text in pieces that end at any place. */
const inPieces = (text: string) =>
  fc.array(fc.nat({ max: text.length }), { maxLength: 20 }).map((ends) => {
    const places = [0, ...ends.toSorted((a, b) => a - b), text.length];
    return places.slice(1).map((end, i) => text.slice(places[i], end));
  });

/** What the parts come to, put together by their paths. */
function together(cuts: readonly Cut[]): unknown {
  const [whole, ...parts] = cuts;
  const document = JSON.parse(whole!.text);
  for (const { path, index, text } of parts) {
    const inside = path.slice(0, -1).reduce((value, name) => value[name], document);
    const value = JSON.parse(text);
    if (index === null)
      Object.defineProperty(inside, path.at(-1)!, { value, enumerable: true, writable: true });
    else Object.getOwnPropertyDescriptor(inside, path.at(-1)!)!.value[index] = value;
  }
  return document;
}

test('whatever a document holds and wherever its pieces end, the parts together are the document', () => {
  const values = fc.jsonValue({ maxDepth: 4, stringUnit: 'binary' });
  const documents = fc.record(
    {
      open: fc.dictionary(fc.string(), fc.oneof(fc.array(values), values)),
      list: fc.array(values),
      other: values,
      'a"b\\': fc.array(values),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(
      documents.chain((document) =>
        fc
          .constantFrom(undefined, 1, '\r\n\t')
          .chain((indent) => inPieces(JSON.stringify(document, null, indent)))
          .map((pieces) => ({ document, pieces })),
      ),
      ({ document, pieces }) => {
        expect(together(cut(pieces))).toEqual(JSON.parse(JSON.stringify(document)));
      },
    ),
  );
});

test('each part names the line on which it begins', () => {
  const lines = ['{', '"a": 1,', '"open": {', '"b": [', '{"c":', '2},', '3', ']', '},', '"d": "x"', '}'];
  const found = cut(lines.join('\n').split('')).map(({ path, index, line }) => [path.join('.'), index, line]);
  expect(found).toEqual([
    ['', null, 1],
    ['a', null, 2],
    ['open', null, 3],
    ['open.b', null, 4],
    ['open.b', 0, 5],
    ['open.b', 1, 7],
    ['d', null, 10],
  ]);
});

test.each([
  ['nothing', '', 1],
  ['an object that is not closed', '{\n"a": 1', 2],
  ['a list that is not closed', '{"a": [1,\n2', 2],
  ['an item that is not closed', '{"a": [\n{"b": "\n', 2],
  ['a list without a comma', '{"a": [1\n2]}', 2],
  ['a name without quotes', '{a: 1}', 1],
  ['a member without a value', '{"a":\n}', 2],
  ['an item too few', '{"a": [1,\n]}', 2],
  ['more after the end', '{}\n{}', 2],
])('%s is refused by its line', (_what, text, line) => {
  for (const pieces of [[text], text.split('')]) {
    let error: unknown;
    try {
      cut(pieces);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(Uncut);
    expect(error).toMatchObject({ line, message: `is not valid JSON at line ${line}` });
  }
});

const nested = (levels: number) => [`{"a": ${'['.repeat(levels + 1)}${']'.repeat(levels + 1)}}`];

test('a value is nested at most 64 levels deep', () => {
  expect(cut(nested(64))).toHaveLength(3);
  expect(() => cut(nested(65))).toThrow('nested more than 64 levels deep');
});

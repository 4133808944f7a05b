import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { beyondBounds } from './beyondBounds.ts';

/** A document and every value within it, by walking it. */
function count(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce((sum: number, inside) => sum + count(inside), 1);
}

test('no document with fewer values than the limit is refused, whatever stands in its texts and names', () => {
  const documents = fc.jsonValue({ maxDepth: 5, stringUnit: 'binary' });
  fc.assert(
    fc.property(documents, fc.constantFrom(undefined, 2), (document, indent) => {
      const text = JSON.stringify(document, null, indent);
      // The first value of a list or object has no comma before it: what is counted is at most as many again.
      expect(beyondBounds(text, 2 * count(document))).toBeNull();
    }),
  );
});

test('a list of more values than the limit is refused, texts with commas and quotes counted once', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'binary' }), { minLength: 1, maxLength: 40 }), (texts) => {
      const text = JSON.stringify(texts);
      expect(beyondBounds(text, texts.length + 1)).toBeNull();
      expect(beyondBounds(text, texts.length)).toBe(`holds more than ${texts.length} values`);
    }),
  );
});

const lists = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;
const objects = (levels: number) => `${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}`;

test('64 levels are read and 65 are not, in lists and in objects, however they open and close before', () => {
  for (const nested of [lists, objects]) {
    expect(beyondBounds(nested(64))).toBeNull();
    expect(beyondBounds(nested(65))).toBe('is nested more than 64 levels deep');
  }
  expect(beyondBounds(`[${`${lists(63)},`.repeat(100)}1]`)).toBeNull();
});

import { expect, test } from 'vitest';
import { csvCounts } from './csvCounts.ts';

test.each([
  [{ rows: 15, added: 2, changed: 1, unchanged: 12 }, '2 new, 1 changed, 12 as they were'],
  [{ rows: 1, added: 0, changed: 0, unchanged: 1 }, '1 as it was'],
  [{ rows: 0, added: 0, changed: 0, unchanged: 0 }, 'no line but the header'],
])('%j is told as "%s"', (counts, words) => {
  expect(csvCounts(counts)).toBe(words);
});

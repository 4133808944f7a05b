import { expect, test } from 'vitest';
import { unitSlipSentence } from './unitSlipSentence.ts';

test('a slip is told with how many sets look like it, and that nothing was changed', () => {
  expect(unitSlipSentence('pounds', 41)).toMatch(/^These 41 sets look like pounds/);
  expect(unitSlipSentence('tenfold', 1)).toMatch(/^This set looks like a nought too many\. It is kept out/);
  expect(unitSlipSentence('pounds', 2)).toContain('nothing was changed');
});

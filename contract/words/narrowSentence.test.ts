import { expect, test } from 'vitest';
import { narrowSentence } from './narrowSentence.ts';

const belief = (low80: number, median: number, high80: number) => ({
  low95: low80 - 20,
  low80,
  median,
  high80,
  high95: high80 + 20,
});

test('a wide range says what to log, a narrow one says nothing', () => {
  expect(narrowSentence(belief(170, 200, 230))).toMatch(/heavy single.*speed.*left/);
  expect(narrowSentence(belief(195, 200, 205))).toBeNull();
});

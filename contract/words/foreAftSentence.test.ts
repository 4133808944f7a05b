import { expect, test } from 'vitest';
import { foreAftSentence } from './foreAftSentence.ts';

// 9.80665 N for each kilogram: CGPM 1901.
const force = (newtons: number) => `${Math.round(newtons / 9.80665)} kg`;

test.each([
  [40, 1, 'The bands pull 4 kg forward at the bottom.'],
  [-40, 20, 'The bands pull 4 kg back at the bottom and 2 kg forward at lockout.'],
  [-4.9, -5, 'The bands pull 1 kg back at lockout.'],
  [0, 0, 'The bands pull neither forward nor back.'],
])('%d N and %d N are said with their way and end', (bottomN, lockoutN, sentence) => {
  expect(foreAftSentence({ bottomN, lockoutN, pathMeasured: true }, force)).toBe(sentence);
  const guessed = foreAftSentence({ bottomN, lockoutN, pathMeasured: false }, force);
  expect(guessed.startsWith(sentence)).toBe(true);
  expect(guessed).toMatch(/assumed to go straight up/);
});

import { expect, test } from 'vitest';
import { slipQuestion, unitSlipSentence } from './unitSlipSentence.ts';

test('a slip is told with how many sets look like it, and that nothing was changed', () => {
  expect(unitSlipSentence('pounds', 41)).toMatch(/^These 41 sets look like pounds/);
  expect(unitSlipSentence('tenfold', 1)).toMatch(/^This set looks like a nought too many\. It is kept out/);
  expect(unitSlipSentence('pounds', 2)).toContain('nothing was changed');
});

/** Dates as they are given. */
const asRead = (date: string) => date;

test('the question names lifter, lift, days and what the sets look like', () => {
  const slip = {
    looksLike: 'pounds',
    lift: 'squat',
    setCount: 41,
    firstOn: '2 March',
    lastOn: '29 March',
  } as const;
  expect(slipQuestion(slip, 'Hana', asRead)).toBe(
    'These 41 squats by Hana from 2 March to 29 March look like pounds written down as kilograms.',
  );
  const one = { ...slip, looksLike: 'tenfold', lift: 'bench', setCount: 1, lastOn: '2 March' } as const;
  expect(slipQuestion(one, '', asRead)).toBe('This bench press on 2 March looks like a nought too many.');
});

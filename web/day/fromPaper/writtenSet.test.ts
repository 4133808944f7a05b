import { expect, test } from 'vitest';
import { emptySet } from '#web/setup/setDraft.ts';
import {
  asAsked,
  asPrinted,
  questionOf,
  setOf,
  shownOf,
  type WrittenSet,
  wasAsked,
  withMiss,
  wrongWith,
} from './writtenSet.ts';

// An international pound is 0.45359237 kg.
const poundKg = 0.45359237;
const planned = { ...emptySet('squat', '2026-11-24'), lifterId: 'lifter-1', reps: 3, made: 3 };
const draft = { ...planned, setup: { ...planned.setup, barKg: 109.9123 } };
/** On the wall it is called 110. */
const printed = { printedBar: '110', draft };
const done = (change: Partial<WrittenSet>): WrittenSet => ({ ...asPrinted, done: true, ...change });
const logged = (change: Partial<WrittenSet>, mass: 'kg' | 'lb' = 'kg') => setOf(done(change), printed, mass);

test('a set that nobody wrote anything of goes on record as it was planned, to the gram', () => {
  const { setup, reps, made, meanSpeedsMps, note } = logged({});
  expect([setup.barKg, reps, made, meanSpeedsMps, note]).toEqual([109.9123, 3, 3, [], '']);
  expect(shownOf(asPrinted, printed)).toMatchObject({ bar: '110', made: '3' });
});

test('another bar is read in the unit of the view, or in the one typed with it', () => {
  // Who writes what is printed has loaded what is planned.
  expect(logged({ bar: ' 110 ' }).setup.barKg).toBe(109.9123);
  expect(logged({ bar: '105' }).setup.barKg).toBe(105);
  expect(logged({ bar: '225' }, 'lb').setup.barKg).toBeCloseTo(225 * poundKg, 9);
  expect(logged({ bar: '225 lb' }).setup.barKg).toBeCloseTo(225 * poundKg, 9);
});

test('a miss is a rep fewer of those asked for, and nobody makes fewer than none', () => {
  const once = withMiss(asPrinted, printed);
  expect(setOf(once, printed, 'kg')).toMatchObject({ reps: 3, made: 2 });
  const often = [1, 2, 3, 4].reduce((written) => withMiss(written, printed), once);
  expect(setOf(often, printed, 'kg')).toMatchObject({ reps: 3, made: 0 });
  expect(once.done).toBe(true);
});

test('more reps than planned were asked for, too: the log has no more made than asked', () => {
  expect(logged({ made: '5' })).toMatchObject({ reps: 5, made: 5 });
});

test('speeds are written with a point or a comma, one for the set or one a rep', () => {
  expect(logged({ speeds: '0,62' }).meanSpeedsMps).toEqual([0.62]);
  expect(logged({ speeds: '0.62 0.60 0.58' }).meanSpeedsMps).toEqual([0.62, 0.6, 0.58]);
});

test.each<[string, Partial<WrittenSet>, string, RegExp]>([
  ['an empty bar', { bar: '' }, 'bar', /is needed/],
  ['a bar of words', { bar: 'heavy' }, 'bar', /heavy/],
  ['no reps', { made: '' }, 'made', /is empty/],
  ['half a rep', { made: '2.5' }, 'made', /"2.5"/],
  ['a speed without its point', { speeds: '62' }, 'speeds', /62 m\/s/],
  ['two speeds of three reps', { speeds: '0.6 0.5' }, 'speeds', /2 figures/],
  ['a remark as long as a letter', { remark: 'x'.repeat(2001) }, 'remark', /2001 letters/],
])('%s is told by its field in a sentence', (_, change, field, sentence) => {
  const wrong = wrongWith(done(change), printed, 'kg');
  expect(wrong?.field).toBe(field);
  expect(wrong?.sentence).toMatch(sentence);
});

test('nothing is wrong with a set as printed', () => {
  expect(wrongWith(done({}), printed, 'kg')).toBeNull();
});

test('a bar far from the one on the paper is asked about once, with what may have been meant; as printed, near or wrong it is not', () => {
  // 225 typed where kilograms stand, with a planned bar of 110 kg: in pounds it is 102.06 kg.
  const odd = done({ bar: '225' });
  expect(questionOf(odd, printed, 'kg')).toMatchObject({
    sentence: expect.stringMatching(/the bar on the paper, 109\.9/),
    offers: [{ word: expect.stringMatching(/^Pounds\? 102\.06 kg/) }],
  });
  expect(wasAsked(odd, printed)).toBe(false);
  expect(wasAsked(asAsked(odd, printed), printed)).toBe(true);
  expect(wasAsked({ ...asAsked(odd, printed), bar: '226' }, printed)).toBe(false);
  for (const bar of [null, '110', '95', '130', '225 lb', 'abc'])
    expect(questionOf(done({ bar }), printed, 'kg')).toBeNull();
});

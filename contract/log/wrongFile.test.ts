import { expect, test } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { notTakenSentence } from './columnsNotTaken.ts';
import { readLog } from './readLog.ts';

const club = twoLifters();
const name = club.lifter[0]!.name;
/** No set of these tests is dated later, but where that is what they are about. */
const LAST_DAY = '2090-01-01';

test('says of every column that it leaves behind, also of one without a header that holds something', () => {
  const text = `date,lifter,lift,bar,reps,,,Mood\n2026-01-13,${name},bench,100,5,sunny,,7\n`;
  const { notTaken } = readLog(text, null, club, LAST_DAY);
  expect(notTaken).toEqual(['column 6, which has no header', 'Mood']);
  expect(notTakenSentence(notTaken)).toBe(
    '2 columns of the file are not taken: column 6, which has no header, Mood.',
  );
  const columns = { date: 'date', lifter: 'lifter', lift: 'lift', bar: 'Mood', reps: 'reps' };
  expect(readLog(text, columns, club, LAST_DAY).notTaken).toContain('bar');
});

test('refuses a set of tomorrow in the words of the file, and takes one of today', () => {
  const today = '2026-11-25';
  expect(readLog(oneSetOn(today), null, club, today)).toMatchObject({
    sets: [{ doneOn: today }],
    problems: [],
  });
  const message = 'When is "2026-11-26"; it must be no later than today, 2026-11-25.';
  expect(readLog(oneSetOn('2026-11-26'), null, club, today)).toMatchObject({
    sets: [],
    problems: [{ line: 2, column: 'When', message }],
  });
});

test.each([
  // NIST SP 811: 1000 kg are 2204.62 lb; 20 kg are 44.09 lb.
  ['Weight (lb)', '3000', 'Weight (lb) is "3000"; it must be at most 2204.62 lb.'],
  ['Body weight lb', '30', 'Body weight lb is "30"; it must be at least 44.09 lb.'],
  ['Box height cm', '400', 'Box height cm is "400"; it must be at most 300 cm.'],
  ['Rest (min)', '200', 'Rest (min) is "200"; it must be at most 120 min.'],
  ['Rest (min)', '3:30', '"3:30" is not a number; write the minutes alone, such as 3.5.'],
  ['Reps', '5x3', '"5x3" is not a number; write the number alone, such as 5 or 8.5.'],
  ['Reps', '5.5', 'Reps is 5.5; it must be a whole number.'],
  ['Sets', '2.5', 'Sets is 2.5; it must be a whole number from 1 to 50.'],
  ['RPE', '12', 'RPE is 12; it must be a rating from 0 to 10 in halves.'],
  ['Date', '0026-11-20', 'Date is "0026-11-20"; it must be no earlier than 1900-01-01.'],
])('speaks of %s as the file does, and of nothing that it lacks: %s', (header, cell, message) => {
  const line: Record<string, string> = { Date: '2026-01-13', Name: name, Lift: 'box squat', Reps: '5' };
  const all = { ...line, 'Weight (lb)': '225', 'Box height cm': '36', [header]: cell };
  const text = `${Object.keys(all).join(',')}\n${Object.values(all).join(',')}\n`;
  expect(readLog(text, null, club, LAST_DAY).problems).toEqual([{ line: 2, column: header, message }]);
});

test('refuses one column of the file for two of the log', () => {
  const columns = { date: 'date', lifter: 'lifter', lift: 'lift', bar: 'bar', reps: 'bar' };
  const text = `date,lifter,lift,bar\n2026-01-13,${name},squat,5\n`;
  expect(readLog(text, columns, club, LAST_DAY).problems).toMatchObject([{ line: 1, column: 'reps' }]);
});

test('tells every wrong cell by line and column, the same one once, and takes nothing', () => {
  const text = [
    'date,lifter,lift,bar,reps,made,box height,equipment,platform',
    `2026-01-13,${name},squat,100,5,,,,`,
    '2026-01-13,Nobody,curl,100,5,6,,,maybe',
    `2026-01-13,${name},box squat,100,5,6,,,`,
    '2026-01-13,Nobody,squat,heavy,,,,,',
    '2026-01-13,Nobody,squat,100,5,,,,',
    '2026-01-13,Nobody,squat,100,5,,,,',
    `2026-01-13,${name},squat,100`,
    `2026-01-13,${name},squat,heavy,5,,,suit,`,
    `2026-01-13,${name},squat,100,5,,,suit,`,
  ].join('\n');
  const { sets, problems } = readLog(text, null, club, LAST_DAY);
  expect(sets).toEqual([]);
  expect(problems.map(({ line, column }) => [line, column])).toEqual([
    [3, 'lift'],
    [3, 'lifter'],
    [3, 'platform'],
    [4, 'made'],
    [4, 'box height'],
    [5, 'reps'],
    [8, ''],
    [9, 'bar'],
    [10, 'equipment'],
  ]);
  expect(problems[1]?.message).toMatch(/"Nobody"\. So on 2 more lines\.$/);
});

function oneSetOn(day: string) {
  return `When,Who,lift,bar,reps\n${day},${name},squat,100,5\n`;
}

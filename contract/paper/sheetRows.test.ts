import { expect, test } from 'vitest';
import { pxPerMm } from './paperSize.ts';
import type { WrittenStep } from './RackSheetModel.ts';
import { linesOfStep, mostLifters, mostStepLines, sheetRows } from './sheetRows.ts';

const nothing = { speed: '', inZone: '', strain: '', shorterRest: '', spare: '', allReps: '' };
const step = (letters: number) =>
  ({ effort: { ...nothing, speed: 'x'.repeat(letters) } }) as unknown as WrittenStep;

test('an inch of 25.4 mm is 96 pixels of style sheets', () => {
  expect(25.4 * pxPerMm).toBeCloseTo(96, 12);
});

test('a step takes a second line where more is said of it than ninety letters, and a sheet goes by the most lines', () => {
  const lines = (...letters: number[]) => ({ steps: letters.map(step) });
  expect([linesOfStep(step(90)), linesOfStep(step(91))]).toEqual([1, 2]);
  expect(mostStepLines([lines(10, 91), lines(10), lines(91, 91)])).toBe(4);
  expect(mostStepLines([])).toBe(0);
});

const of = (lifters: number, above = '', ...said: string[]) => sheetRows('a4', lifters, 2, said, above);

// A4 leaves 280 mm of height. Eighteen are the head's and twenty the foot's at least; a row is 64 mm at most.
test('a page is filled: few lifters have tall rows, many share what head, note and foot leave', () => {
  expect(of(1)).toEqual({ rowMm: 64, numeralMm: 16.5, stepMm: 4.8 });
  expect(of(8).rowMm).toBeCloseTo((280 - 18 - 20) / 8, 9);
  expect(sheetRows('letter', 8, 2, [], '').rowMm).toBeCloseTo((262 - 18 - 20) / 8, 9);
  // What stands above the rows has a line of 4.25 mm for each 84 letters, and 2 mm about it.
  expect(of(8, 'x'.repeat(84)).rowMm).toBeCloseTo((280 - 18 - 20 - 2 - 4.25) / 8, 9);
  expect(of(8, 'x'.repeat(85)).rowMm).toBeCloseTo((280 - 18 - 20 - 2 - 2 * 4.25) / 8, 9);
  // Small print of 88 letters a line, 3.65 mm each: five lines need more than twenty with 4 mm about them.
  const said = ['x'.repeat(88), 'x'.repeat(89), 'x', 'x'];
  expect(of(8, '', ...said).rowMm).toBeCloseTo((280 - 18 - 4 - 5 * 3.65) / 8, 9);
});

test('steps stay within their share of the row and legible, and the figure is no taller than half of what they leave', () => {
  for (const lifters of [1, 3, 6, 9])
    for (const stepLines of [1, 2, 4]) {
      const { rowMm, numeralMm, stepMm } = sheetRows('a4', lifters, stepLines, [], '');
      expect(stepMm).toBeCloseTo(Math.min(4.8, Math.max(3.5, (rowMm * 0.42) / stepLines)), 9);
      expect(numeralMm).toBeCloseTo(Math.min(16.5, 0.53 * rowMm, rowMm - stepLines * stepMm - 2.5), 9);
    }
});

test('as many lifters share a page as fit with all their steps, nine at most and one at least', () => {
  for (const stepLines of [0, 1, 3, 5, 9, 70]) {
    const most = mostLifters(stepLines, '');
    const fit = Math.floor(222 / (15.5 + 3.5 * stepLines));
    expect(most).toBe(Math.max(1, Math.min(9, fit)));
  }
  // Rows of three lines are 26 mm: eight of them in 222 mm, seven beside a note of eight lines, which takes 36.
  expect([mostLifters(3, ''), mostLifters(3, 'x'.repeat(8 * 84))]).toEqual([8, 7]);
});

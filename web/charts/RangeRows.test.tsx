import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { type RangeRow, RangeRows } from './RangeRows.tsx';

const club: RangeRow = {
  key: 'c',
  name: 'The whole club',
  isClub: true,
  value: 5,
  low80: 4,
  high80: 6,
  low95: 3,
  high95: 7,
};
const one: RangeRow = { ...club, key: 'o', name: 'One', isClub: false };
const draw = (rows: RangeRow[], widthPx = 700) =>
  renderToStaticMarkup(<RangeRows label="Question" axis="kg, for 10 kg" rows={rows} widthPx={widthPx} />);

test('the club is a square, a lifter a circle, so that a black-and-white printer loses nothing', () => {
  expect(draw([club])).toMatch(/<rect/);
  expect(draw([club])).not.toMatch(/<circle/);
  expect(draw([one])).toMatch(/<circle/);
});

test('a range that leaves the picture ends in an arrow inside it', () => {
  const wild = { ...one, key: 'w', low95: -400, high95: 400 };
  expect(draw([club, one])).not.toContain('fill="none"');
  expect(draw([club, one, wild]).match(/fill="none"/g)?.length).toBe(2);
  const xs = [...draw([club, one, wild]).matchAll(/M([\d.-]+) [\d.]+H([\d.-]+)/g)].flatMap(([, a, b]) => [
    a,
    b,
  ]);
  for (const x of xs.map(Number)) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x).toBeLessThanOrEqual(700);
  }
});

test('everything in it is read aloud', () => {
  expect(draw([club, one], 360)).toContain('Question. The whole club: 5.0, most likely 4.0 to 6.0. One: 5.0');
});

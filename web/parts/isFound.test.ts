import { expect, test } from 'vitest';
import { isFound } from './isFound.ts';

test.each([
  ['Kwabena Ofosu-Tandoh', 'tan', true],
  ['Kwabena Ofosu-Tandoh', 'kwa ofo', true],
  ['Kwabena Ofosu-Tandoh', 'ofosu-t', true],
  ['Kwabena Ofosu-Tandoh', 'fosu', false],
  ['Tereza Holoubková', 'holoubkova', true],
  ['Anyone', '', true],
])('%s is found by "%s": %s', (name, asked, found) => {
  expect(isFound([name], asked)).toBe(found);
});

test('words may stand in different texts of one thing, and all of them must stand somewhere', () => {
  const lifter = ['Ilse Vandermolen', 'early crew', 'Left knee: no deep box.'];
  expect(isFound(lifter, 'ilse knee')).toBe(true);
  expect(isFound(lifter, 'early van')).toBe(true);
  expect(isFound(lifter, 'ilse late')).toBe(false);
  expect(isFound([], 'ilse')).toBe(false);
});

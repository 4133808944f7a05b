import { expect, test } from 'vitest';
import { isNamed } from './isNamed.ts';

test.each([
  ['Kwabena Ofosu-Tandoh', 'tan', true],
  ['Kwabena Ofosu-Tandoh', 'kwa ofo', true],
  ['Kwabena Ofosu-Tandoh', 'ofosu-t', true],
  ['Kwabena Ofosu-Tandoh', 'fosu', false],
  ['Tereza Holoubková', 'holoubkova', true],
  ['Anyone', '', true],
  ['Tereza Holoubková', 'early', true],
  ['Tereza Holoubková', 'ter crew', true],
  ['Tereza Holoubková', 'late', false],
])('%s of the early crew is found by "%s": %s', (name, asked, found) => {
  expect(isNamed({ name, labels: ['early crew'] }, asked)).toBe(found);
});

import { expect, test } from 'vitest';
import { labelsIn, labelsOf } from './labelsIn.ts';

test('labels are what stands between commas, each once whatever its capitals', () => {
  expect(labelsIn('early crew,  juniors ,')).toEqual(['early crew', 'juniors']);
  expect(labelsIn('Juniors, juniors')).toEqual(['Juniors']);
  expect(labelsIn(' , ')).toEqual([]);
});

test('what the club uses is named once, in the order of the alphabet', () => {
  expect(labelsOf([{ labels: ['late crew'] }, { labels: ['Juniors', 'late crew'] }, { labels: [] }])).toEqual(
    ['Juniors', 'late crew'],
  );
});

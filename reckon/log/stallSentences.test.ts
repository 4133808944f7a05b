import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { recentWork } from './recentWork.ts';
import { stallSentences } from './stallSentences.ts';

const on = '2026-06-28';
const weeksAgo = (weeks: number) =>
  new Date(Date.parse(on) - weeks * 7 * 86_400_000).toISOString().slice(0, 10);
const stall = { weeks: 8, probability: 0.124, median: 0, low80: -0.01, high80: 0.01 };
const box = (heightM: number) => ({ with: { start: { way: 'box' as const, heightM } } });
const weekly = (from: number, to: number, heightM: number) =>
  Array.from({ length: to - from }, (_, i) =>
    loggedSquat(`${heightM} ${from + i}`, weeksAgo(from + i), 100, box(heightM)),
  );
const say = (sets: ReturnType<typeof weekly>) =>
  stallSentences(stall, recentWork(sets, 'squat', on, 8), (set) => `box ${set.setup.start.heightM}`);

test('the chance is said in a hundred, and the box that never changed is named', () => {
  const sentences = say(weekly(0, 16, 0.36)).join(' ');
  expect(sentences).toContain('last 8 weeks');
  expect(sentences).toContain('12 in 100');
  expect(sentences).toContain('The same as before: box 0.36, in 8 of the 8 weeks.');
  expect(sentences).toContain('No setup changed');
  expect(sentences).toContain('8 sets of the lift, 8 in the 8 weeks before');
});

test('where the work did change, what came and what went is said and nothing is called the same', () => {
  const sentences = say([...weekly(0, 8, 0.3), ...weekly(8, 16, 0.36)]).join(' ');
  expect(sentences).toContain('New in these weeks: box 0.3.');
  expect(sentences).toContain('Not done any more: box 0.36.');
  expect(sentences).not.toContain('The same');
});

test('of work that fell by half it is said that less was done', () => {
  expect(say([...weekly(0, 4, 0.36), ...weekly(8, 16, 0.36)]).join(' ')).toContain(
    'Less was done than before: 4 sets of the lift, 8 in the 8 weeks before.',
  );
});

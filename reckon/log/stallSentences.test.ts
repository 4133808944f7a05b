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
const work = (sets: number, setsBefore: number) => ({ weeks: 8, sets, setsBefore, used: [], dropped: [] });
const say = (sets: ReturnType<typeof weekly>) =>
  stallSentences(stall, recentWork(sets, 'squat', on, 8), (set) => `box ${set.setup.start.heightM}`);

test('the chance is said in a hundred, and the box that never changed is named', () => {
  const sentences = say(weekly(0, 16, 0.36)).join(' ');
  expect(sentences).toContain('last 8 weeks');
  expect(sentences).toMatch(/^Strength has probably not risen in the last 8 weeks: .* 12 %\./);
  expect(sentences).toContain('A lifter gets used to what stays the same');
  expect(sentences).toContain('About as much was done as before: 8 sets');
  expect(sentences).toContain('The same as before: box 0.36, in 8 of the 8 weeks.');
  expect(sentences).toContain('No setup changed');
  expect(sentences).toContain('8 sets of the lift, 8 in the 8 weeks before');
});

test('where the work did change, what came and what went is said and nothing is called the same', () => {
  const sentences = say([...weekly(0, 8, 0.3), ...weekly(8, 16, 0.36)]).join(' ');
  expect(sentences).toContain('New in these weeks: box 0.3.');
  expect(sentences).toContain('No longer done: box 0.36.');
  expect(sentences).not.toContain('The same');
});

test('of work that fell by half it is said that less was done', () => {
  expect(say([...weekly(0, 4, 0.36), ...weekly(8, 16, 0.36)]).join(' ')).toContain(
    'Less was done than before: 4 sets of the lift, 8 in the 8 weeks before.',
  );
});

test('a chance below one in a hundred is told as such, and nothing is said of work before that was none', () => {
  const sentences = stallSentences(
    { ...stall, probability: 0.004 },
    recentWork(weekly(0, 8, 0.36), 'squat', on, 8),
    () => 'box',
  );
  expect(sentences.join(' ')).toContain('is less than 1 %');
  expect(sentences.join(' ')).not.toContain('was done');
});

test('work is about the same within a fifth, and more or less beyond', () => {
  const [set] = weekly(0, 1, 0.36);
  const how = (sets: number) => stallSentences(stall, work(sets, 10), () => '').at(-1);
  expect([8, 12].map(how)).toEqual([expect.stringMatching(/^About/), expect.stringMatching(/^About/)]);
  expect([7, 13].map(how)).toEqual([expect.stringMatching(/^Less/), expect.stringMatching(/^More/)]);
  // Nothing at all was done: no word of setups.
  expect(stallSentences(stall, work(0, 0), () => '')).toHaveLength(1);
  const five = Array.from({ length: 5 }, (_, i) => ({ ...set!, id: `${i}` }));
  const dropped = stallSentences(stall, { ...work(0, 0), dropped: five }, ({ id }) => id);
  expect(dropped).toContain('No longer done: 0; 1; 2 and 2 more.');
  const steady = five.map((example, i) => ({ example, inWeeks: 6 - i, isNew: false }));
  const same = stallSentences(stall, { ...work(0, 0), used: steady }, ({ id }) => id);
  expect(same).toContain('The same as before: 0, in 6 of the 8 weeks; 1, in 5; 2, in 4.');
});

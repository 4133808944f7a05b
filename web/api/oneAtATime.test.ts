import { expect, test } from 'vitest';
import { oneAtATime } from './oneAtATime.ts';

const untilHeard = () => new Promise<void>((resolve) => setImmediate(resolve));

test('news that come faster than they are fetched never cut a fetch off: all that came meanwhile is one more', async () => {
  const ends: (() => void)[] = [];
  const ask = oneAtATime(() => new Promise((resolve) => ends.push(resolve)));
  for (let news = 0; news < 5; news += 1) ask();
  expect(ends).toHaveLength(1);
  ends[0]!();
  await untilHeard();
  expect(ends).toHaveLength(2);
  ends[1]!();
  await untilHeard();
  expect(ends).toHaveLength(2);
  ask();
  expect(ends).toHaveLength(3);
});

test('one that fails keeps nobody from the next', async () => {
  let begun = 0;
  const ask = oneAtATime(async () => {
    begun += 1;
    throw new Error('The server does not answer.');
  });
  ask();
  await untilHeard();
  ask();
  expect(begun).toBe(2);
});

import { expect, test } from 'vitest';
import { newestFirst } from './newestFirst.ts';

/** Works that end when told, in the order in which they were begun. */
function byHand(width: number) {
  const queue = newestFirst<string>(width);
  const begun: string[] = [];
  const ends = new Map<string, () => void>();
  return {
    begun,
    ask(key: string, behind = false) {
      const work = () =>
        new Promise<string>((resolve) => {
          begun.push(key);
          ends.set(key, () => resolve(key));
        });
      return { key, result: queue.ask(key, work, { behind }) };
    },
    async end({ key, result }: { key: string; result: Promise<string> }) {
      ends.get(key)!();
      expect(await result).toBe(key);
      // The next one is begun once the last has told its end.
      await Promise.resolve();
    },
  };
}

test('the last asked comes first, and what nobody waits for comes last', async () => {
  const { ask, begun, end } = byHand(1);
  const [a, b, c] = [ask('a', true), ask('b', true), ask('c', true)];
  const [d, e] = [ask('d'), ask('e')];
  expect(begun).toEqual(['a']);
  await end(a);
  await end(e);
  await end(d);
  await end(b);
  await end(c);
  expect(begun).toEqual(['a', 'e', 'd', 'b', 'c']);
});

test('asked again while it waits it is one work, and comes to the front', async () => {
  const { ask, begun, end } = byHand(1);
  const a = ask('a');
  const [behind, other, again] = [ask('b', true), ask('c'), ask('b')];
  await end(a);
  await end(again);
  expect(await behind.result).toBe('b');
  await end(other);
  expect(begun).toEqual(['a', 'b', 'c']);
});

test('asked again while it waits it is done as it was asked for last, for all who wait', async () => {
  const queue = newestFirst<string>(1);
  const first = queue.ask('a', async () => 'a');
  const waiting = ['early', 'late'].map((word) => queue.ask('b', async () => word));
  expect(await Promise.all([first, ...waiting])).toEqual(['a', 'late', 'late']);
});

test('as many as there is room for are at work, and a fault ends none of the others', async () => {
  const queue = newestFirst<number>(2);
  let atWork = 0;
  const seen: number[] = [];
  const work = (value: number) => async () => {
    atWork += 1;
    seen.push(atWork);
    await Promise.resolve();
    atWork -= 1;
    if (value === 1) throw new Error('once');
    return value;
  };
  const results = await Promise.allSettled([0, 1, 2, 3, 4].map((i) => queue.ask(`${i}`, work(i))));
  expect(results.map(({ status }) => status === 'fulfilled')).toEqual([true, false, true, true, true]);
  expect(Math.max(...seen)).toBe(2);
});

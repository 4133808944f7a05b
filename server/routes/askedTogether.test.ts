import { expect, test } from 'vitest';
import { askedTogether } from './askedTogether.ts';

function world() {
  const now = { state: 'before', begun: [] as string[], end: () => {} };
  const ended = new Promise<void>((resolve) => {
    now.end = resolve;
  });
  const ask = askedTogether(
    async () => now.state,
    async (id) => {
      const answer = `${id} ${now.state}`;
      now.begun.push(answer);
      await ended;
      if (id === 'fault') throw new Error(answer);
      return answer;
    },
  );
  return { now, ask };
}

test('who asks while the same is worked on gets the same answer, and who asks after a change another', async () => {
  const { now, ask } = world();
  const asked = [ask('day-1'), ask('day-2'), ask('day-1')];
  await Promise.resolve();
  now.state = 'after';
  asked.push(ask('day-1'));
  await Promise.resolve();
  now.end();
  expect(await Promise.all(asked)).toEqual(['day-1 before', 'day-2 before', 'day-1 before', 'day-1 after']);
  expect(now.begun).toEqual(['day-1 before', 'day-2 before', 'day-1 after']);
  expect(await ask('day-1')).toBe('day-1 after');
  expect(now.begun).toHaveLength(4);
});

test('a fault goes to all who asked, and the next one asks anew', async () => {
  const { now, ask } = world();
  const asked = [ask('fault'), ask('fault')];
  now.end();
  for (const one of asked) await expect(one).rejects.toThrow('fault before');
  await expect(ask('fault')).rejects.toThrow('fault before');
  expect(now.begun).toHaveLength(2);
});

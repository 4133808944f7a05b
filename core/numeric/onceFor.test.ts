import { expect, test } from 'vitest';
import { onceFor } from './onceFor.ts';

test('an answer is worked out once for the same things in the same order, and anew for any other', () => {
  const asked: string[] = [];
  const joined = onceFor((one: { name: string }, other: { name: string }) => {
    asked.push(`${one.name}${other.name}`);
    return asked.at(-1) === 'ab' ? undefined : asked.at(-1);
  });
  const [a, b] = [{ name: 'a' }, { name: 'b' }];
  const answers = [joined(a, b), joined(b, a), joined(a, b), joined(a, a), joined({ ...a }, a), joined(a, a)];
  expect(answers).toEqual([undefined, 'ba', undefined, 'aa', 'aa', 'aa']);
  expect(asked).toEqual(['ab', 'ba', 'aa', 'aa']);
});

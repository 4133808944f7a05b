import { expect, test } from 'vitest';
import { clockBehind } from './clockBehind.ts';

test('a clock that was put back is told of with both moments and the way out; one that goes right, or only differs by seconds, is not', () => {
  const now = new Date('2026-11-30T08:30:00.000Z');
  expect(clockBehind('2026-12-01T06:15:30.000Z', now)).toMatch(
    /2026-11-30 08:30 UTC.*2026-12-01 06:15 UTC: set the clock right/,
  );
  for (const madeAt of [null, '2026-11-30T08:29:00.000Z', '2026-11-30T08:30:20.000Z'])
    expect(clockBehind(madeAt, now)).toBeNull();
});

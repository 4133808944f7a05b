import { expect, it } from 'vitest';
import { noClock, timeSpent } from './timeSpent.ts';

it('is the share of the limit that is gone since it was asked for, whatever the clock showed then', () => {
  let nowMs = 1000;
  const spent = timeSpent(() => nowMs, 200);
  expect(spent()).toBe(0);
  nowMs = 1050;
  expect(spent()).toBe(0.25);
  nowMs = 1200;
  expect(spent()).toBe(1);
});

it('never passes for who can wait', () => {
  expect(timeSpent(noClock, 200)()).toBe(0);
});

import { expect, test } from 'vitest';
import type { Reference } from '#contract/day/dayPlan.ts';
import { referenceWords } from './referenceWords.ts';

const mass = (kg: number) => `${kg} kg`;
const reference = { kg: 150, doneOn: '2026-05-02', loweredFromKg: null, equipment: 'raw' as const };
const words = (change: Partial<Reference>) => referenceWords({ ...reference, from: 'best', ...change }, mass);

test('what no lift told is called assumed, and never a best', () => {
  for (const loweredFromKg of [null, 160]) {
    const said = words({ from: 'model', doneOn: null, loweredFromKg });
    expect(said).toMatch(/^assumed/);
    expect(said).not.toMatch(/best/);
  }
});

test('only a best that stands as it was lifted is called one without "est."', () => {
  expect(words({})).toMatch(/^best on /);
  expect(words({ from: 'log', doneOn: null })).toBe('est. from the log');
  for (const change of [
    { loweredFromKg: 160 },
    { from: 'model' as const },
    { from: 'log' as const, loweredFromKg: 160 },
  ])
    expect(words(change)).toMatch(/^est\. /);
});

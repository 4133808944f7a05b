import { expect, test } from 'vitest';
import { planOf } from '#contract/day/planOf.ts';
import { inventedPlan } from '#contract/tests/inventedPlan.ts';
import { numberLine } from './numberLine.ts';

const about = { id: 'p', dayId: 'd', number: 3, solvedAt: '2026-11-25T20:58:00Z' };
const read = (document: unknown) => planOf({ ...about, document });
// Oslo is an hour before UTC in November (time zone database).
const line = (document: unknown) =>
  numberLine({ ...about, fingerprint: '3fa9c1', document: read(document) }, 'Europe/Oslo');
const plain = 'Number 3 of this day, at 21:58, fingerprint 3fa9c1';

test('a plan is named by number, time by the clock on the wall and fingerprint, one told anew by the log also by whose bars it has', () => {
  expect(line(inventedPlan())).toBe(plain);
  expect(line({ ...inventedPlan(), retells: 2 })).toBe(`${plain}, same bars as number 2`);
});

test('a plan of an older version, which knew of no telling anew, is read and named; so is one that cannot be read', () => {
  const { retells: _, ...older } = inventedPlan();
  expect(read(older)).toEqual(inventedPlan());
  expect(line(older)).toBe(plain);
  expect(line({ of: 'another program' })).toBe(plain);
});

import { expect, test } from 'vitest';
import { inventedPlan } from '#contract/tests/inventedPlan.ts';
import { planOf } from './planOf.ts';

const prescribed = (document: unknown) => ({
  id: 'p',
  dayId: 'day',
  number: 1,
  solvedAt: '2026-11-26T10:00:00Z',
  document,
});

test('a plan is read from what was prescribed, once, and nothing from what cannot be read', () => {
  const one = prescribed(inventedPlan());
  expect(planOf(one)).toEqual(inventedPlan());
  expect(planOf(one)).toBe(planOf(one));
  expect(planOf(prescribed({ ...inventedPlan(), groups: 'none' }))).toBeNull();
});

test('an older plan knows nothing of what was not told yet: nothing taken off, left out or tired', () => {
  const older = structuredClone(inventedPlan());
  const [group] = older.groups;
  group!.proof = { status: 'optimal', bound: 0, gap: 0 } as NonNullable<typeof group>['proof'];
  const { strength, blocks } = group!.places[0]!.solved!;
  Object.assign(strength, { belowShare: undefined, setCount: undefined });
  for (const { effort } of blocks) Object.assign(effort!, { tiredLn: undefined, setMps: undefined });
  // Stored as text, where what is undefined is not there.
  const read = planOf(prescribed(JSON.parse(JSON.stringify(older))))!.groups[0]!;
  expect(read.proof!.setsLeftOut).toBe(0);
  expect(read.places[0]!.solved!.strength).toMatchObject({ belowShare: 0, setCount: null });
  expect(read.places[0]!.solved!.blocks[0]!.effort).toMatchObject({ tiredLn: 0, setMps: null });
});

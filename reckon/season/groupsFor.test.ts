import { expect, test } from 'vitest';
import type { PlannedGroup } from '#contract/season/seasonPlan.ts';
import { groupsFor } from './groupsFor.ts';

const strength = { timesBodyMass: { squat: null, bench: null, deadlift: null } };
const boxAt = (heightM: number) => ({
  aboveParallelM: 0,
  wantedM: heightM + 0.004,
  known: 'estimated' as const,
  heightM,
});
const group = (start: PlannedGroup['start']) =>
  ({ askedId: 'speed-squat', lift: 'squat', leastTimesBodyMass: null, start }) as PlannedGroup;

test('a group with one start for everybody is the same group for everybody', () => {
  const fixed = group({ way: 'box', heightM: 0.36 });
  for (const ownBoxes of [undefined, [boxAt(0.41)]])
    expect(groupsFor({ groups: [fixed] }, { ...strength, ...(ownBoxes && { ownBoxes }) })[0]).toBe(fixed);
});

test('where each has a box of their own, each has it, and those on one box share the group', () => {
  const own = group({ way: 'ownBox', aboveParallelM: 0 });
  const as = (heightM: number) =>
    groupsFor({ groups: [own] }, { ...strength, ownBoxes: [boxAt(heightM)] })[0]!;
  expect(as(0.33)).toEqual({ ...own, start: { way: 'box', heightM: 0.33 }, ownBox: boxAt(0.33) });
  expect(as(0.45).start).toEqual({ way: 'box', heightM: 0.45 });
  expect(as(0.33)).toBe(as(0.33));
});

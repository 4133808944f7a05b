import { describe, expect, it } from 'vitest';
import { type LoggedSet, nothingSeen } from '#contract/records/loggedSet.ts';
import { doneOfPlan } from './doneOfPlan.ts';
import type { PlannedSets } from './plannedSets.ts';

const start = { way: 'box', heightM: 0.36 } as const;
const setup = (barKg: number) => ({ rackId: null, start, barKg, bands: [], chains: [] });
const work: PlannedSets = {
  lift: 'squat',
  equipment: 'raw',
  onlyOfLift: false,
  sets: [80, 110, 110].map((barKg, i) => ({
    number: i + 1,
    step: i === 0 ? 0 : 1,
    reps: 2,
    setup: setup(barKg),
  })),
};

describe('what was done of a plan', () => {
  it('is told at the planned set, whichever was tapped first', () => {
    const { done } = doneOfPlan(work, [logged('a', 110), logged('b', 80)]);
    expect(idsOf(done)).toEqual(['b', 'a', null]);
  });

  it('counts a set with another weight in the first place that is left, and more sets on top', () => {
    const sets = [logged('a', 80), logged('b', 105), logged('c', 110), logged('d', 110)];
    const { done, extra } = doneOfPlan(work, sets);
    expect(idsOf(done)).toEqual(['a', 'c', 'd']);
    expect(idsOf(extra)).toEqual(['b']);
  });

  it('leaves out what was struck and what belongs to another start of the same lift', () => {
    const lower = { ...setup(80), start: { way: 'box', heightM: 0.3 } as const };
    const sets = [
      { ...logged('a', 80), struckAt: '2026-11-25T18:00:00Z' },
      { ...logged('b', 80), setup: lower },
    ];
    expect(doneOfPlan(work, sets)).toEqual({ done: [null, null, null], extra: [] });
    const alone = doneOfPlan({ ...work, onlyOfLift: true }, sets);
    expect(idsOf(alone.done)).toEqual(['b', null, null]);
  });
});

function idsOf(sets: readonly (LoggedSet | null)[]): (string | null)[] {
  return sets.map((set) => set?.id ?? null);
}

function logged(id: string, barKg: number): LoggedSet {
  return {
    id,
    lifterId: 'lifter-1',
    doneOn: '2026-11-25',
    lift: 'squat',
    equipment: 'raw',
    setup: setup(barKg),
    reps: 2,
    made: 2,
    ...nothingSeen,
    platform: false,
    place: '',
    dayId: 'day-1',
    planNumber: null,
    note: '',
    order: 1,
    loggedAt: '2026-11-25T17:00:00Z',
    struckAt: null,
  };
}

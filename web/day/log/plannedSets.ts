import type { DayPlan, PlanPlace } from '#contract/day/dayPlan.ts';
import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';

/** One set of a lifter's prescription, with everything that belongs on the bar. */
export interface PlannedSet {
  /** Counts the lifter's sets of this group, from 1. */
  number: number;
  /** Which of the group's steps it belongs to, from 0. */
  step: number;
  reps: number;
  setup: Setup;
}

/** All that a lifter was given in one group. */
export interface PlannedSets {
  lift: Lift;
  equipment: Equipment;
  sets: readonly PlannedSet[];
  /** Whether the lifter does this lift in no other group of the day: sets with another start are then of this one. */
  onlyOfLift: boolean;
}

/** What was worked out for a lifter in a group, set by set; null where nothing was. */
export function plannedSets(plan: DayPlan, groupId: string, lifterId: string): PlannedSets | null {
  const group = plan.groups.find((candidate) => candidate.groupId === groupId);
  const place = group?.places.find((candidate) => candidate.lifterId === lifterId);
  if (!group || !place?.solved) return null;
  const alike = plan.groups.filter(
    (other) => other.lift === group.lift && other.places.some((p) => p.lifterId === lifterId),
  );
  const { solved } = place;
  const sets = solved.blocks.flatMap((block, step) =>
    Array.from({ length: block.sets }, () => ({
      step,
      reps: block.reps,
      setup: { ...withoutBar(place), barKg: block.barKg },
    })),
  );
  return {
    lift: group.lift,
    equipment: solved.reference.equipment,
    sets: sets.map((set, i) => ({ ...set, number: i + 1 })),
    onlyOfLift: alike.length === 1,
  };
}

function withoutBar({ rackId, start, solved }: PlanPlace): Omit<Setup, 'barKg'> {
  const { bands = [], chains = [] } = solved?.set ?? {};
  return {
    rackId,
    start,
    bands: bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId })),
    chains: chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs })),
  };
}

import type { DayPlan } from '#contract/dayPlan.ts';
import type { Day } from '#contract/records/day.ts';

/**
 * Whether a plan is still that of the day as it now stands: aims, lifters, racks, order, starts, sets and what the coach
 * fixed. Gear and people that changed since are not looked at.
 */
export function dayMatchesPlan(day: Day, plan: DayPlan): boolean {
  return day.date === plan.date && day.oneSetPull === plan.oneSetPull && same(dayFacts(day), planFacts(plan));
}

function dayFacts({ groups }: Day) {
  return groups.map(({ id, lift, aim, start, blocks, places }) => ({
    id,
    lift,
    aim,
    places: places.map((place) => ({
      lifterId: place.lifterId,
      rackId: place.rackId,
      start: place.start ?? start,
      ownBar: place.byCoach?.barKg != null,
      ownSet: (place.byCoach?.bands ?? place.byCoach?.chains ?? null) !== null,
      blocks: blocks.map(({ sets, reps, restSeconds, shareOfAim }) => [sets, reps, restSeconds, shareOfAim]),
    })),
  }));
}

function planFacts({ groups }: DayPlan) {
  return groups.map(({ groupId, lift, aim, places }) => ({
    id: groupId,
    lift,
    aim,
    places: places.map(({ lifterId, rackId, start, solved }) => ({
      lifterId,
      rackId,
      start,
      ownBar: solved?.byCoach.bar,
      ownSet: solved?.byCoach.set,
      blocks: solved?.blocks.map(({ sets, reps, restSeconds, shareOfAim }) => [
        sets,
        reps,
        restSeconds,
        shareOfAim,
      ]),
    })),
  }));
}

/** Alike but for what the second leaves out: a lifter for whom nothing could be worked out. */
function same(asked: unknown, planned: unknown): boolean {
  if (planned === undefined) return true;
  if (typeof asked !== 'object' || asked === null) return asked === planned;
  if (typeof planned !== 'object' || planned === null) return false;
  const keys = Object.keys(asked);
  if (keys.length !== Object.keys(planned).length) return false;
  return keys.every((key) => same(Reflect.get(asked, key), Reflect.get(planned, key)));
}

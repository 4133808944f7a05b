import type { DayPlan } from './dayPlan.ts';

/** Names of the lifters of these ids in a plan, each once, in its order. */
export function namesOf({ groups }: Pick<DayPlan, 'groups'>, lifterIds: readonly string[]): string[] {
  const places = groups.flatMap((group) => group.places);
  return [...new Map(places.map(({ lifterId, name }) => [lifterId, name]))].flatMap(([id, name]) =>
    lifterIds.includes(id) ? [name] : [],
  );
}

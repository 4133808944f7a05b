import type { DayPlan, PlanPlace } from '#contract/day/dayPlan.ts';
import { lacksLog } from './lacksLog.ts';

/** What a plan told anew by the log has that the plan itself has not: ids of lifters. */
export interface ToldAnew {
  /** Who goes by the log now, and went by a best or body mass alone. */
  lifters: string[];
  /** Of these, who is likely to miss by the log, of which the plan said nothing. */
  likelyToMiss: string[];
}

const missed = new Set(['unlikely', 'notMade', 'notAllReps']);

/** Compares the two seat by seat; `told` comes of `planByLog`. */
export function toldAnew(plan: Pick<DayPlan, 'groups'>, told: Pick<DayPlan, 'groups'>): ToldAnew {
  const pairs = plan.groups.flatMap(({ places }, group) =>
    places.map((before, seat) => ({ before, now: told.groups[group]!.places[seat]! })),
  );
  const anew = pairs.filter(({ before, now }) => lacksLog(before) && !lacksLog(now));
  const warned = anew.filter(({ before, now }) => saysMissed(now) && !saysMissed(before));
  return { lifters: idsOf(anew), likelyToMiss: idsOf(warned) };
}

function saysMissed({ solved }: PlanPlace): boolean {
  const cautions = solved?.blocks.flatMap(({ explanation }) => explanation.cautions) ?? [];
  return [...cautions, ...(solved?.cautions ?? [])].some(({ code }) => missed.has(code));
}

function idsOf(seats: readonly { now: PlanPlace }[]): string[] {
  return [...new Set(seats.map(({ now }) => now.lifterId))];
}

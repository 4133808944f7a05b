import type { DayPlan, PlanPlace } from './dayPlan.ts';

/** What differs for one lifter in one group between two plans of a day. */
export interface SeatDifference {
  groupId: string;
  lifterId: string;
  name: string;
  /** Bar of the aim, kg; null: nothing was worked out, or the lifter was not there. */
  fromKg: number | null;
  toKg: number | null;
  /** Other pairs, hookups or chains, or another rack. */
  otherSet: boolean;
  otherRack: boolean;
}

/** Lifters whose bar, what hangs on it or whose rack differs between two plans, in the order of the later one; gone ones last. */
export function planDifference(
  earlier: Pick<DayPlan, 'groups'>,
  later: Pick<DayPlan, 'groups'>,
): SeatDifference[] {
  const before = seatsOf(earlier);
  const after = seatsOf(later);
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((key) => {
    const then = before.get(key);
    const now = after.get(key);
    const { groupId, place } = (now ?? then)!;
    const fromKg = then?.place.solved?.barKg ?? null;
    const toKg = now?.place.solved?.barKg ?? null;
    const both = then !== undefined && now !== undefined;
    const otherSet = both && setOf(then.place) !== setOf(now.place);
    const otherRack = both && then.place.rackId !== now.place.rackId;
    if (fromKg === toKg && !otherSet && !otherRack) return [];
    return [{ groupId, lifterId: place.lifterId, name: place.name, fromKg, toKg, otherSet, otherRack }];
  });
}

function seatsOf({ groups }: Pick<DayPlan, 'groups'>) {
  return new Map(
    groups.flatMap(({ groupId, places }) =>
      places.map((place) => [`${groupId} ${place.lifterId}`, { groupId, place }] as const),
    ),
  );
}

/** What hangs, whatever the order in which it is written. */
function setOf({ solved }: PlanPlace): string {
  const { bands, chains } = solved?.set ?? { bands: [], chains: [] };
  return JSON.stringify([
    bands.map(({ bandPairId, hookupId }) => `${bandPairId} ${hookupId}`).sort(),
    chains.map(({ chainPairId, pairs }) => `${chainPairId} ${pairs}`).sort(),
  ]);
}

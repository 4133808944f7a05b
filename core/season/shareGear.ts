/** What one lifter could train with at one rack: each way the pairs that it hangs, as bits. */
export type Ways = readonly bigint[];

export interface GearAsked {
  /** By lifter and rack; no way at a rack: that lifter cannot train there. */
  ways: readonly (readonly Ways[])[];
  /** So many lifters get their sets in at one rack within the hour. */
  mostARack: number;
  /** Only what serves everybody is of use: what cannot is not looked at further, and then nobody counts as served. */
  onlyAll?: boolean;
}

export interface GearShared {
  /** By lifter; null: no rack and no pairs are left for this one. */
  rackOf: (number | null)[];
  /** By rack: all pairs that hang there during the hour, as bits. */
  pairsAt: bigint[];
  /** Nobody could be served beyond these; false where the search was cut off before it could tell. */
  isMost: boolean;
}

/** Beyond so many steps the best found so far is given. */
const MOST_STEPS = 2000;

/**
 * Serves as many lifters as the gear allows within one hour: those of a rack take turns and may change bands between them, so that they share pairs; a
 * pair that one rack uses is not free for another. Branch and bound over lifters, those with the fewest ways first.
 */
export function shareGear({ ways, mostARack, onlyAll = false }: GearAsked): GearShared {
  const racks = Math.max(0, ...ways.map((byRack) => byRack.length));
  const order = [...ways.keys()].sort((a, b) => countOf(ways[a]!) - countOf(ways[b]!));
  const rackOf: (number | null)[] = ways.map(() => null);
  const pairsAt: bigint[] = Array.from({ length: racks }, () => 0n);
  const countAt: number[] = pairsAt.map(() => 0);
  const seen = new Map<string, number>();
  const toCome = countsToCome(ways, order, racks);
  /** No more than these can be served from a place in the order on, whatever hangs where. */
  const mostFrom = (at: number) =>
    countAt.reduce((sum, count, rack) => sum + Math.min(mostARack - count, toCome[at]?.[rack] ?? 0), 0);
  const goal = Math.min(ways.filter((byRack) => countOf(byRack) > 0).length, mostFrom(0));
  let best = { served: onlyAll ? ways.length - 1 : -1, rackOf: [...rackOf], pairsAt: [...pairsAt] };
  let steps = 0;

  const isWhole = () => best.served >= goal || steps > MOST_STEPS;
  const look = (at: number, served: number) => {
    if (served > best.served) best = { served, rackOf: [...rackOf], pairsAt: [...pairsAt] };
    if (at === order.length || isWhole()) return;
    const used = pairsAt.reduce((all, pairs) => all | pairs, 0n);
    const taken = pairsAt.map((pairs) => used & ~pairs);
    const isFree = (set: bigint, rack: number) => (set & taken[rack]!) === 0n;
    const canBeServed = (lifter: number) =>
      ways[lifter]!.some((sets, rack) => countAt[rack]! < mostARack && sets.some((set) => isFree(set, rack)));
    const wanted = best.served - served;
    if (mostFrom(at) <= wanted || countUpTo(order, at, canBeServed, wanted + 1) <= wanted) return;
    const key = `${at} ${pairsAt.join(' ')} ${countAt.join(' ')}`;
    if ((seen.get(key) ?? -1) >= served) return;
    seen.set(key, served);
    steps += 1;

    const lifter = order[at]!;
    const options = ways[lifter]!.flatMap((sets, rack) =>
      countAt[rack]! < mostARack ? sets.filter((set) => isFree(set, rack)).map((set) => ({ rack, set })) : [],
    );
    // With room there for all who are still to come nothing is lost by hanging no more than hangs already.
    const free = options.find(
      ({ rack, set }) => (set & ~pairsAt[rack]!) === 0n && mostARack - countAt[rack]! >= order.length - at,
    );
    for (const { rack, set } of free ? [free] : options) {
      const before = pairsAt[rack]!;
      pairsAt[rack] = before | set;
      countAt[rack]! += 1;
      rackOf[lifter] = rack;
      look(at + 1, served + 1);
      pairsAt[rack] = before;
      countAt[rack]! -= 1;
      rackOf[lifter] = null;
      if (isWhole()) return;
    }
    if (free === undefined) look(at + 1, served);
  };
  look(0, 0);
  return { rackOf: best.rackOf, pairsAt: best.pairsAt, isMost: steps <= MOST_STEPS };
}

/** How many from a place on fulfil it; no further than to the number that decides. */
function countUpTo(
  order: readonly number[],
  from: number,
  isOne: (lifter: number) => boolean,
  enough: number,
): number {
  let count = 0;
  for (let at = from; at < order.length && count < enough; at++) if (isOne(order[at]!)) count += 1;
  return count;
}

/** By place in the order and by rack: how many from there on can train at that rack if everything were theirs. */
function countsToCome(ways: GearAsked['ways'], order: readonly number[], racks: number): number[][] {
  let after = Array.from({ length: racks }, () => 0);
  return order
    .toReversed()
    .map((lifter) => {
      after = after.map((count, rack) => count + ((ways[lifter]![rack]?.length ?? 0) > 0 ? 1 : 0));
      return after;
    })
    .reverse();
}

function countOf(byRack: readonly Ways[]): number {
  return byRack.reduce((sum, sets) => sum + sets.length, 0);
}

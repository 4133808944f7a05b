import type { AllocationInput } from './Allocation.ts';
import type { GearSet } from './Gear.ts';

/** One thing that several racks may want at the same time: a band pair, or the pairs of one kind of chain. */
export interface SharedItem {
  id: string;
  sort: 'bandPair' | 'chainPair';
  /** How many racks may have it (a pair: one), or pairs of chain in stock (the most any rack lists); more where the coach's own choices need more. */
  capacity: number;
  /** The coach's own choices alone need more than there is. */
  clash: boolean;
  users: { rack: number; hookups: number[]; chain: number | null }[];
}

export function sharedStock({ racks, lifters }: Pick<AllocationInput, 'racks' | 'lifters'>): SharedItem[] {
  const items = new Map<string, SharedItem>();
  racks.forEach((gear, rack) => {
    const userOf = (sort: SharedItem['sort'], id: string, capacity: number) => {
      const key = `${sort} ${id}`;
      const item = items.get(key) ?? { id, sort, capacity, clash: false, users: [] };
      item.capacity = Math.max(item.capacity, capacity);
      items.set(key, item);
      const user = item.users.find((one) => one.rack === rack) ?? { rack, hookups: [], chain: null };
      if (!item.users.includes(user)) item.users.push(user);
      return user;
    };
    gear.hookups.forEach(({ pairId }, index) => userOf('bandPair', pairId, 1).hookups.push(index));
    gear.chains.forEach(({ chainPairId, pairs }, kind) => {
      userOf('chainPair', chainPairId, pairs).chain = kind;
    });
  });
  const fixedSets = lifters
    .filter((lifter) => lifter.setFixed)
    .map(({ rack, ranking }) => ({ rack, set: ranking.sets[0]! }));
  return [...items.values()].map((item) => {
    const needed = item.users.reduce((sum, user) => sum + neededBy(user, fixedSets), 0);
    return { ...item, capacity: Math.max(item.capacity, needed), clash: needed > item.capacity };
  });
}

function neededBy(
  user: SharedItem['users'][number],
  fixedSets: readonly { rack: number; set: GearSet }[],
): number {
  const here = fixedSets.filter(({ rack }) => rack === user.rack).map(({ set }) => set);
  const { chain, hookups } = user;
  if (chain !== null) return Math.max(0, ...here.map((set) => set.chainPairs[chain] ?? 0));
  return here.some((set) => set.hookups.some((index) => hookups.includes(index))) ? 1 : 0;
}

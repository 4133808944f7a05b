import { type AllowedGear, allowedSets } from './allowedSets.ts';
import { countSets } from './countSets.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { likelySets } from './likelySets.ts';
import type { MisfitPlane } from './misfitPlanes.ts';
import { promisingSets } from './promisingSets.ts';

/** How far a search through the sets of one lifter may go. */
export interface ListingLimits {
  mostSets: number;
  /** Asked now and then: true ends the listing; left out, it goes on to the end. */
  outOfTime?: (() => boolean) | undefined;
}

/** The sets of one lifter that are scored one by one. */
export interface ListedSets {
  sets: readonly GearSet[];
  /** How many others there are, those that may not be proposed counted; 0 where all were looked at. */
  leftOut: number;
  /** The squared misfit that none of the others goes below. */
  leftOutFrom: number;
}

/** What is known of the sets before they are scored: asked only where there are too many. */
export interface Outlook {
  planes: readonly MisfitPlane[];
  /** How far from the aim a set is at least, with any bar. */
  missOf(set: GearSet): number;
}

/** Of a stock that is too large no more are grown: the bound hardly rises with the number. */
const MOST_GROWN = 5000;

/**
 * All sets where there are no more than `mostSets`, in the order of `enumerateSetups`. Of a larger stock those that are
 * likely (`likelySets`) and those that promise most: planes under the squared misfit (`misfitPlanes`) add up over the
 * pieces of a set, so that the bound of a set holds for everything that is made of it by hanging more, and the sets come
 * in the order of their bounds. What is still waiting when the listing ends has no lower bound than the next in line.
 */
export function listSets(
  gear: RackGear,
  allowed: AllowedGear,
  outlook: () => Outlook,
  { mostSets, outOfTime = () => false }: ListingLimits,
): ListedSets {
  const count = countSets(gear, allowed.usable, allowed.mostPairs);
  if (count <= mostSets)
    return { sets: allowedSets(gear, allowed), leftOut: 0, leftOutFrom: Number.POSITIVE_INFINITY };
  const { planes, missOf } = outlook();
  const likely = likelySets(gear, allowed, missOf, outOfTime);
  const { sets, looked, from } = promisingSets(gear, allowed, planes, {
    mostSets: Math.min(MOST_GROWN, mostSets),
    outOfTime,
  });
  const listed = new Map([...sets, ...likely].map((set) => [keyOf(set), set]));
  const leftOut = count - looked - (listed.size - sets.length);
  return { sets: [...listed.values()], leftOut, leftOutFrom: from };
}

function keyOf({ hookups, chainPairs }: GearSet): string {
  return `${hookups.join()}/${chainPairs.join()}`;
}

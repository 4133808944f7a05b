import { minHeap } from '#core/numeric/minHeap.ts';
import type { AllowedGear } from './allowedSets.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { MisfitPlane } from './misfitPlanes.ts';
import { canHang, withChain, withHookup } from './oneMore.ts';

/**
 * Sets in the order of their bounds, until there are enough of them: what a plane under the squared misfit says of a set
 * adds up over its pieces, and less what further pieces could take off it holds for everything that is made of the set by
 * hanging more. `from`: no set that was not looked at has a squared misfit below.
 */
export function promisingSets(
  gear: RackGear,
  allowed: AllowedGear,
  planes: readonly MisfitPlane[],
  { mostSets, outOfTime }: { mostSets: number; outOfTime: () => boolean },
): { sets: GearSet[]; looked: number; from: number } {
  const pieces = piecesInOrder(gear, allowed, planes);
  const open = minHeap();
  const waiting: Waiting[] = [];
  const sets: GearSet[] = [];
  let looked = 0;
  const look = (grown: Grown) => {
    looked++;
    if (allowed.isAllowed(grown.set)) sets.push(grown.set);
    for (let at = grown.last; at < pieces.length; at++) {
      const left = pieces[at]!.leftAfter(grown.set);
      if (left < 0) continue;
      let bound = 0;
      for (let plane = 0; plane < planes.length; plane++) {
        const { steps, gains } = pieces[at]!;
        const step = steps[plane]!;
        bound = Math.max(bound, grown.values[plane]! + step + Math.min(0, step) * left + gains[plane]!);
      }
      open.push(waiting.push({ onto: grown, at }) - 1, bound);
    }
  };
  const bare = { hookups: [], chainPairs: gear.chains.map(() => 0) };
  look({ set: bare, last: 0, values: planes.map(({ base }) => base) });
  for (let next = open.pop(); next !== null; next = open.pop()) {
    if (looked >= mostSets || (looked % ASK_EVERY === 0 && outOfTime()))
      return { sets, looked, from: next.key };
    const { onto, at } = waiting[next.index]!;
    const { hang, steps } = pieces[at]!;
    look({ set: hang(onto.set), last: at, values: onto.values.map((value, plane) => value + steps[plane]!) });
  }
  return { sets, looked, from: Number.POSITIVE_INFINITY };
}

const ASK_EVERY = 64;

/** A set to look at: the one it is grown from, and the piece that is hung on it. */
interface Waiting {
  onto: Grown;
  at: number;
}

interface Grown {
  set: GearSet;
  /** Place of the last piece that was hung; larger sets only add pieces from here on, so that each comes up once. */
  last: number;
  /** For each plane its value at the set. */
  values: readonly number[];
}

interface Piece {
  /** How many more there are once one more hangs; below 0 where it cannot. */
  leftAfter(set: GearSet): number;
  hang(set: GearSet): GearSet;
  /** What one adds to each plane, and what all pieces after it could still take off. */
  steps: readonly number[];
  gains: number[];
}

/** Those that take most off the first plane come first. */
function piecesInOrder(
  gear: RackGear,
  { usable, mostPairs }: AllowedGear,
  planes: readonly MisfitPlane[],
): Piece[] {
  const noGains = () => planes.map(() => 0);
  const pieces: (Piece & { most: number })[] = [
    ...usable.map((index) => ({
      most: 1,
      leftAfter: (set: GearSet) => (canHang(gear, mostPairs, set, index) ? 0 : -1),
      hang: (set: GearSet) => withHookup(set, index),
      steps: planes.map(({ hookups }) => hookups[index]!),
      gains: noGains(),
    })),
    ...gear.chains.map(({ pairs }, kind) => ({
      most: pairs,
      leftAfter: ({ chainPairs }: GearSet) => pairs - chainPairs[kind]! - 1,
      hang: (set: GearSet) => withChain(set, kind),
      steps: planes.map(({ chains }) => chains[kind]!),
      gains: noGains(),
    })),
  ];
  pieces.sort((a, b) => a.steps[0]! - b.steps[0]!);
  for (let at = pieces.length - 2; at >= 0; at--) {
    const { steps, gains, most } = pieces[at + 1]!;
    pieces[at]!.gains = gains.map((gain, plane) => gain + Math.min(0, steps[plane]!) * most);
  }
  return pieces;
}

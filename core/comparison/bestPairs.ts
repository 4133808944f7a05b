/** Two members by their numbers, the smaller first. */
export type Pair = readonly [number, number];
export type Distance = (a: number, b: number) => number;

/** So many are paired exactly; the work doubles with each one more. */
const EXACT_MEMBERS = 16;
/** Of a larger crew so many pairs are paired anew together. */
const PAIRS_ABOUT = 6;
/** What is gained by less is rounding. */
const NO_GAIN = 1e-9;

/**
 * Members 0 to `count` - 1, an even number of them, in pairs whose distances have the least sum. Exact up to `EXACT_MEMBERS`: the best
 * pairs of every set from those of smaller sets (Held & Karp 1962, J SIAM 10:196, for pairs). Beyond, the nearest are taken first, and
 * then each pair with those about it is paired anew exactly until nothing is gained, which comes near.
 */
export function bestPairs(count: number, distance: Distance): Pair[] {
  const all = Array.from({ length: count }, (_, i) => i);
  if (count <= EXACT_MEMBERS) return exactPairs(all, distance);
  let pairs = nearestFirst(all, distance);
  for (let gained = true; gained; ) {
    gained = false;
    for (const middle of pairs) {
      if (!pairs.includes(middle)) continue;
      const about = pairs
        .toSorted((a, b) => apart(middle, a, distance) - apart(middle, b, distance))
        .slice(0, PAIRS_ABOUT);
      const anew = exactPairs(
        about.flat().sort((a, b) => a - b),
        distance,
      );
      if (!(sumOf(anew, distance) < sumOf(about, distance) - NO_GAIN)) continue;
      pairs = [...pairs.filter((pair) => !about.includes(pair)), ...anew];
      gained = true;
    }
  }
  return pairs.toSorted(([a], [b]) => a - b);
}

export function sumOf(pairs: readonly Pair[], distance: Distance): number {
  return pairs.reduce((sum, [a, b]) => sum + distance(a, b), 0);
}

/** Sets are bit masks. The lowest member of each is paired with every other one; what is left over was solved before. */
function exactPairs(members: readonly number[], distance: Distance): Pair[] {
  const n = members.length;
  const between = members.map((a) => members.map((b) => distance(a, b)));
  const least = new Float64Array(2 ** n).fill(Number.POSITIVE_INFINITY);
  const partner = new Int8Array(2 ** n);
  least[0] = 0;
  for (let set = 1; set < least.length; set++) {
    const low = lowestOf(set);
    for (let other = low + 1; other < n; other++) {
      if (!(set & (1 << other))) continue;
      const sum = least[set ^ (1 << low) ^ (1 << other)]! + between[low]![other]!;
      if (!(sum < least[set]! - NO_GAIN)) continue;
      least[set] = sum;
      partner[set] = other;
    }
  }
  const pairs: Pair[] = [];
  for (let set = least.length - 1; set > 0; ) {
    const [low, other] = [lowestOf(set), partner[set]!];
    pairs.push([members[low]!, members[other]!]);
    set ^= (1 << low) ^ (1 << other);
  }
  return pairs;
}

function lowestOf(set: number): number {
  return 31 - Math.clz32(set & -set);
}

function nearestFirst(members: readonly number[], distance: Distance): Pair[] {
  const possible = members.flatMap((a, i) => members.slice(i + 1).map((b): Pair => [a, b]));
  const taken = new Set<number>();
  return possible
    .toSorted((a, b) => distance(...a) - distance(...b))
    .filter(([a, b]) => {
      if (taken.has(a) || taken.has(b)) return false;
      taken.add(a).add(b);
      return true;
    });
}

/** The least distance between members of two pairs; a pair is nearest to itself. */
function apart(pair: Pair, other: Pair, distance: Distance): number {
  if (pair === other) return -1;
  return Math.min(...pair.flatMap((a) => other.map((b) => distance(a, b))));
}

/** Sets of pairs, as bits, without those that hold another one: who can do with fewer of the same pairs never needs more. */
export function leastSets(sets: readonly bigint[]): bigint[] {
  const least: bigint[] = [];
  for (const set of [...new Set(sets)].sort((a, b) => bitsIn(a) - bitsIn(b)))
    if (least.every((other) => (other & set) !== other)) least.push(set);
  return least;
}

function bitsIn(set: bigint): number {
  let count = 0;
  for (let left = set; left > 0n; left &= left - 1n) count += 1;
  return count;
}

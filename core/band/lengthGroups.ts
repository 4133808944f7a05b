/** Lengths closer than this (m) cannot be told apart with a tape. */
export const SAME_LENGTH_M = 0.0005;

/** Readings, sorted by length, in groups taken at one length. */
export function lengthGroups<Reading extends { lengthM: number }>(sorted: readonly Reading[]): Reading[][] {
  const groups: Reading[][] = [];
  for (const reading of sorted) {
    const group = groups.at(-1);
    if (group && reading.lengthM - group[0]!.lengthM < SAME_LENGTH_M) group.push(reading);
    else groups.push([reading]);
  }
  return groups;
}

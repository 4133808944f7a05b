/**
 * From one set of a day to the next heavier one nobody puts on so many times as much, but a slip of pounds does: 2.2. A plate a side
 * more, 60 to 100 kg or 135 to 225 lb, is 1.67 (common practice, no source).
 */
const MOST_STEP = 1.7;

/** The lightest bar that is reached from the heaviest one without too large a step; `barsKg` are those of one day, not empty. */
export function leastAboveGap(barsKg: readonly number[]): number {
  const down = barsKg.toSorted((a, b) => b - a);
  return down.find((kg, i) => i === down.length - 1 || kg > MOST_STEP * down[i + 1]!)!;
}

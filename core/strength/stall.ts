/** What is believed of the change of strength over the last `weeks`: shares of ln strength, so 0.01 is one per cent. */
export interface Rise {
  weeks: number;
  /** That strength rose by more than `WORTH_LN`. */
  probability: number;
  /** Middle and 80 % interval of the change. */
  median: number;
  low80: number;
  high80: number;
}

/** A change below one per cent of the maximum is no progress: the smallest step on the bar is about that (judgement). */
export const WORTH_LN = 0.01;
/** Within fewer weeks than a usual block of training nobody counts on a rise (common practice, no source). */
const SHORTEST_WEEKS = 8;
/** A rise less likely than this is a stall (judgement). */
const UNLIKELY = 0.2;
/**
 * The data can tell when the 80 % interval of the change is no wider than this: from end to end what a tested maximum
 * scatters by from day to day either way, 2 to 4 % (Grgic et al. 2020, Sports Med Open 6:31).
 */
const WIDEST_LN = 0.06;

/**
 * How strength changed over each of the `windows` (weeks), from equally likely courses of ln strength, a value a week and
 * the newest last. Windows longer than the courses are left out.
 */
export function risesOf(courses: readonly (readonly number[])[], windows: readonly number[]): Rise[] {
  return windows.flatMap((weeks) => {
    const changes = courses
      .filter((course) => course.length > weeks)
      .map((course) => course[course.length - 1]! - course[course.length - 1 - weeks]!)
      .sort((a, b) => a - b);
    if (changes.length === 0) return [];
    const rose = changes.filter((change) => change > WORTH_LN).length;
    return [
      {
        weeks,
        probability: rose / changes.length,
        median: quantile(changes, 0.5),
        low80: quantile(changes, 0.1),
        high80: quantile(changes, 0.9),
      },
    ];
  });
}

/** The longest of the windows over which a rise is unlikely and the data could have told it; null: nothing to say. */
export function stallOf(rises: readonly Rise[]): Rise | null {
  const stalled = rises.filter(
    ({ weeks, probability, low80, high80 }) =>
      weeks >= SHORTEST_WEEKS && probability < UNLIKELY && high80 - low80 <= WIDEST_LN,
  );
  return stalled.reduce<Rise | null>(
    (longest, rise) => (longest !== null && longest.weeks >= rise.weeks ? longest : rise),
    null,
  );
}

/** Between the sorted values, linear. */
function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (at - low) * (sorted[high]! - sorted[low]!);
}

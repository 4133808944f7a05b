import { setupKey } from '#contract/log/setupKey.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** What was done in a lift over the last weeks, beside as many weeks before. */
export interface RecentWork {
  weeks: number;
  /** Sets of the lift in these weeks, and in as many before. */
  sets: number;
  setsBefore: number;
  /** Every exact setup of these weeks by any set of it, the one used in most weeks first. */
  used: { example: LoggedSet; inWeeks: number; isNew: boolean }[];
  /** Setups of the weeks before that were not used again. */
  dropped: LoggedSet[];
}

const MS_A_WEEK = 7 * 86_400_000;

/** What stayed the same and what changed in one lifter's log of a lift, over the `weeks` up to and with `on`. */
export function recentWork(sets: readonly LoggedSet[], lift: Lift, on: string, weeks: number): RecentWork {
  const now = new Map<string, { example: LoggedSet; weeks: Set<number> }>();
  const before = new Map<string, LoggedSet>();
  let [count, countBefore] = [0, 0];
  for (const set of sets) {
    if (set.lift !== lift || set.struckAt !== null) continue;
    const week = Math.floor((Date.parse(on) - Date.parse(set.doneOn)) / MS_A_WEEK);
    if (week < 0 || week >= 2 * weeks) continue;
    const key = setupKey(set);
    if (week >= weeks) {
      countBefore++;
      before.set(key, set);
      continue;
    }
    count++;
    const known = now.get(key) ?? { example: set, weeks: new Set() };
    now.set(key, known);
    known.weeks.add(week);
  }
  return {
    weeks,
    sets: count,
    setsBefore: countBefore,
    used: [...now]
      .map(([key, { example, weeks: inWeeks }]) => ({
        example,
        inWeeks: inWeeks.size,
        isNew: !before.has(key),
      }))
      .sort((a, b) => b.inWeeks - a.inWeeks),
    dropped: [...before].flatMap(([key, set]) => (now.has(key) ? [] : [set])),
  };
}

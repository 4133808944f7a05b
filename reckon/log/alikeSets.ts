import { setupKey } from '#contract/log/setupKey.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/**
 * Sets of one lifter and day in groups of alike ones, in the order in which they were done: the same exact setup, bar and
 * reps asked for, one right after the other. How many reps were made may differ; what was struck is apart from what counts.
 */
export function alikeSets(sets: readonly LoggedSet[]): LoggedSet[][] {
  const groups: LoggedSet[][] = [];
  let lastKey = '';
  for (const set of sets) {
    const key = alikeKey(set);
    if (key === lastKey) groups.at(-1)?.push(set);
    else groups.push([set]);
    lastKey = key;
  }
  return groups;
}

function alikeKey(set: LoggedSet): string {
  const { setup, reps, platform, struckAt } = set;
  return JSON.stringify([setupKey(set), setup.rackId, setup.barKg, reps, platform, struckAt !== null]);
}

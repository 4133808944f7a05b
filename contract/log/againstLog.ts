import type { GivenSet, LoggedSet } from '#contract/records/loggedSet.ts';
import { setupKey } from './setupKey.ts';

/** A set that the log does not have, and its place among the sets of the file. */
export interface NewSet {
  set: GivenSet & { order: number };
  at: number;
}

/**
 * Which sets of a file the log does not have yet. The same lifter, day, lift, setup, reps and place in the day's order is the
 * same set, a struck one too. A set given without an order is known when the log has one like it that no other line
 * stands for; a new one comes after all others of its day.
 */
export function againstLog(sets: readonly GivenSet[], log: readonly LoggedSet[]): NewSet[] {
  const inPlace = new Set<string>();
  const alike = new Map<string, number>();
  const lastOf = new Map<string, number>();
  for (const set of [...log, ...sets]) {
    lastOf.set(dayKey(set), Math.max(lastOf.get(dayKey(set)) ?? 0, set.order ?? 0));
  }
  for (const set of log) {
    const key = likeKey(set);
    inPlace.add(`${key} ${set.order}`);
    alike.set(key, (alike.get(key) ?? 0) + 1);
  }
  return sets.flatMap((set, at): NewSet[] => {
    const key = likeKey(set);
    if (set.order !== null) {
      if (inPlace.has(`${key} ${set.order}`)) return [];
      inPlace.add(`${key} ${set.order}`);
      return [{ set: { ...set, order: set.order }, at }];
    }
    const known = alike.get(key) ?? 0;
    if (known > 0) {
      alike.set(key, known - 1);
      return [];
    }
    const order = (lastOf.get(dayKey(set)) ?? 0) + 1;
    lastOf.set(dayKey(set), order);
    return [{ set: { ...set, order }, at }];
  });
}

function dayKey({ lifterId, doneOn }: GivenSet): string {
  return `${lifterId} ${doneOn}`;
}

function likeKey(set: GivenSet): string {
  return `${dayKey(set)} ${setupKey(set)} ${set.setup.barKg} ${set.reps}`;
}

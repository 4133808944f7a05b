import { setupKey } from '#contract/log/setupKey.ts';
import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** Something that was made with a setup: from the log, or a best that was written down. */
export interface MadeLift {
  id: string;
  from: 'log' | 'best';
  lift: Lift;
  equipment: Equipment;
  setup: Setup;
  doneOn: string;
  reps: number;
  platform: boolean;
  place: string;
}

/** The record of one exact setup with the one that it broke. */
export interface SetupRecord {
  key: string;
  newest: MadeLift;
  /** Null where the setup has only ever had one record. */
  before: MadeLift | null;
}

/**
 * Personal records of one lifter, each only ever against the same setup, the newest first. A record is a heavier bar than
 * any before with that setup, or the same bar for more reps. A best written down counts as a single; where the log holds
 * the same lift of the same day, it is one lift.
 */
export function recordsBySetup(sets: readonly LoggedSet[], bests: readonly Best[]): SetupRecord[] {
  const made = [...sets.flatMap(fromLog), ...bests.map(fromBest)].sort(
    (a, b) => a.doneOn.localeCompare(b.doneOn) || a.setup.barKg - b.setup.barKg || a.reps - b.reps,
  );
  const records = new Map<string, SetupRecord>();
  for (const lift of made) {
    const key = setupKey(lift);
    const standing = records.get(key);
    if (standing === undefined) records.set(key, { key, newest: lift, before: null });
    else if (beats(lift, standing.newest)) {
      // What was lifted on the way up that day is not what stood before it.
      const sameDay = standing.newest.doneOn === lift.doneOn;
      records.set(key, { key, newest: lift, before: sameDay ? standing.before : standing.newest });
    }
  }
  return [...records.values()].sort((a, b) => b.newest.doneOn.localeCompare(a.newest.doneOn));
}

function beats(a: MadeLift, b: MadeLift): boolean {
  return a.setup.barKg > b.setup.barKg || (a.setup.barKg === b.setup.barKg && a.reps > b.reps);
}

function fromLog(set: LoggedSet): MadeLift[] {
  if (set.struckAt !== null || set.made === 0) return [];
  const { id, lift, equipment, setup, doneOn, made, platform, place } = set;
  return [{ id, from: 'log', lift, equipment, setup, doneOn, reps: made, platform, place }];
}

function fromBest({ id, lift, equipment, setup, doneOn, platform, place }: Best): MadeLift {
  return { id, from: 'best', lift, equipment, setup, doneOn, reps: 1, platform, place };
}

import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Best } from '#contract/records/lifters.ts';
import { type LifterCapability, lifterCapability } from '#core/lifter/lifterCapability.ts';
import { straightBest } from '../lifterRecords.ts';
import type { Trial } from './Trial.ts';
import { type TrialHeights, trialHeights } from './trialHeights.ts';
import { trialLoad } from './trialLoad.ts';

/** What the lifter can do, and the best that it rests on. */
export interface TrialStrength extends LifterCapability {
  best: Best;
  bodyMassKg: number;
  /** False where the body mass was assumed. */
  bodyWeighed: boolean;
}

/** A body nobody has weighed (kg); only the moved share of the squat and deadlift hangs on it. Assumption. */
const assumedBodyKg = 80;

const MS_PER_YEAR = 365.25 * 86_400_000;

const known = new WeakMap<ClubRecords, Map<string, TrialStrength | null>>();

/** Strength from the best that says most, through the very setup it was made in. Kept for each state of the club. */
export function trialStrength(
  club: ClubRecords,
  trial: Pick<Trial, 'lifterId' | 'lift' | 'start'>,
  heights: TrialHeights,
  today: string,
): TrialStrength | null {
  const kept = known.get(club) ?? new Map<string, TrialStrength | null>();
  known.set(club, kept);
  const { fromM, toM } = heights.range;
  const key = `${trial.lifterId} ${trial.lift} ${trial.start.way} ${fromM} ${toM}`;
  const before = kept.get(key);
  if (before !== undefined) return before;
  const strength = work(club, trial, heights, today);
  kept.set(key, strength);
  return strength;
}

function work(
  club: ClubRecords,
  { lifterId, lift, start }: Pick<Trial, 'lifterId' | 'lift' | 'start'>,
  heights: TrialHeights,
  today: string,
): TrialStrength | null {
  const bests = club.best
    .filter((best) => best.lifterId === lifterId && best.lift === lift)
    .sort((a, b) => b.doneOn.localeCompare(a.doneOn));
  // A straight best says most; without one the newest of any kind.
  const best = straightBest(bests, lift) ?? bests[0];
  const then = best && trialHeights(club, lifterId, lift, best.setup.start);
  if (!best || !then) return null;
  const [newest] = club.bodyMass
    .filter((mass) => mass.lifterId === lifterId)
    .sort((a, b) => b.takenOn.localeCompare(a.takenOn));
  const bodyMassKg = newest?.massKg ?? assumedBodyKg;
  return {
    best,
    bodyMassKg,
    bodyWeighed: newest !== undefined,
    ...lifterCapability(
      lift,
      { start: start.way, range: heights.range, bodyMassKg },
      {
        load: trialLoad(club, best.setup, then),
        start: best.setup.start.way,
        range: then.range,
        bodyMassKg,
        yearsAgo: (Date.parse(today) - Date.parse(best.doneOn)) / MS_PER_YEAR,
      },
    ),
  };
}

import type { Lift } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { type RatioForetold, ratioForetold } from '#core/season/ratioForetold.ts';
import type { HardLift } from '#reckon/evidence/HardLift.ts';
import { hardLifts } from '#reckon/evidence/hardLifts.ts';
import { meanPull } from '#reckon/evidence/meanPull.ts';
import { type MeetLift, meetLifts } from '#reckon/evidence/meetLifts.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { endsOfSet } from '#reckon/log/endsOfSet.ts';

/** The most that was reached with one exact setup on the way to a meet. */
export interface Reached {
  lift: HardLift;
  /** Bar, bands and chains at lockout, as a mass that is as heavy there. */
  lockoutKg: number;
}

/** An approach with bands and what the platform then gave. */
export interface Approach extends Reached {
  meet: MeetLift;
}

/** All approaches by one exact setup, the newest first, and what they foretell of the one under way. */
export interface SetupApproaches {
  key: string;
  cases: Approach[];
  /** Null: nothing hard was lifted with it in these weeks. */
  now: Reached | null;
  foretold: RatioForetold | null;
}

/** Weeks of the approach, before the days of rest. Common practice, no source. */
const FIRST_DAY_BEFORE = 42;
const LAST_DAY_BEFORE = 3;

/**
 * How a lifter's approaches with bands came out on the platform: for each meet and each exact setup with bands the heaviest hard lift of the six weeks
 * before it, held against the heaviest made there, in the same equipment. The setup that says most of the approach under way comes first.
 */
export function approachesOf(
  records: LoadRecords,
  sets: readonly LoggedSet[],
  bests: readonly Best[],
  { lift, today }: { lift: Lift; today: string },
): SetupApproaches[] {
  const isOf = (one: { lift: Lift }) => one.lift === lift;
  const own = sets.filter(isOf);
  const written = bests.filter(isOf);
  const withBands = hardLifts(own, written, meanPull(records)).filter(({ setup }) => setup.bands.length > 0);
  const meets = meetLifts(own, written);
  const lockoutOf = (one: HardLift) =>
    endsOfSet(records, { ...one, setup: { ...one.setup, barKg: one.barKg } })?.lockoutKg ?? null;
  return [...grouped(withBands, ({ key }) => key).entries()]
    .map(([key, lifts]): SetupApproaches => {
      const cases = meets
        .filter(({ equipment }) => equipment === lifts[0]!.equipment)
        .flatMap((meet) => {
          const reached = mostOf(lifts, daysBefore(meet.doneOn), lockoutOf);
          return reached === null ? [] : [{ ...reached, meet }];
        })
        .toReversed();
      const now = mostOf(lifts, { from: daysLater(today, -FIRST_DAY_BEFORE), until: today }, lockoutOf);
      const ratios = cases.map(({ lockoutKg, meet }) => ({ from: lockoutKg, to: meet.barKg }));
      return { key, cases, now, foretold: now && ratioForetold(ratios, now.lockoutKg) };
    })
    .filter(({ cases, now }) => cases.length > 0 || now !== null)
    .sort((a, b) => Number(b.now !== null) - Number(a.now !== null) || b.cases.length - a.cases.length);
}

function daysBefore(meetOn: string) {
  return { from: daysLater(meetOn, -FIRST_DAY_BEFORE), until: daysLater(meetOn, -LAST_DAY_BEFORE) };
}

function mostOf(
  lifts: readonly HardLift[],
  { from, until }: { from: string; until: string },
  lockoutOf: (lift: HardLift) => number | null,
): Reached | null {
  return lifts
    .filter(({ doneOn }) => doneOn >= from && doneOn <= until)
    .reduce<Reached | null>((most, lift) => {
      const lockoutKg = lockoutOf(lift);
      return lockoutKg !== null && lockoutKg > (most?.lockoutKg ?? 0) ? { lift, lockoutKg } : most;
    }, null);
}

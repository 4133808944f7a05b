import type { GainPair } from '#core/evidence/gainSlope.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { HardLift } from './HardLift.ts';
import type { MeetStep } from './meetLifts.ts';

/** A gain between two meets at one exact setup beside the gain on the platform. */
export interface GymGain extends GainPair {
  step: MeetStep;
  /** The gym lifts that the gain is reckoned from. */
  from: HardLift;
  to: HardLift;
  /** Days on which that setup was done hard before either meet: each is the best of so many. */
  fromDays: number;
  toDays: number;
}

/** Gym lifts of so many days before a meet speak for it (assumption: a block of ten weeks). */
export const WINDOW_DAYS = 70;
/** A greater change, as a share of the platform lift, is no strength: one of the two was not hard (judgement). */
const MOST_GAIN = 0.25;
/** One hard day alone may have been a bad one (judgement). */
const LEAST_DAYS = 2;
const MS_A_DAY = 86_400_000;

/**
 * For each step from meet to meet the gain at one exact setup: the best before the later meet less the best before the
 * earlier one, both over what was lifted at the earlier meet. Of several setups done before both meets, the one done on most days
 * speaks: chosen by how often it was done, never by what came of it.
 */
export function gymGains(steps: readonly MeetStep[], lifts: readonly HardLift[]): GymGain[] {
  const byLift = grouped(lifts, ({ lifterId, lift }) => `${lifterId} ${lift}`);
  return steps.flatMap((step) => {
    const { before, after } = step;
    const own = byLift.get(`${before.lifterId} ${before.lift}`) ?? [];
    const early = grouped(windowOf(own, before.doneOn, ''), ({ key }) => key);
    const late = grouped(windowOf(own, after.doneOn, before.doneOn), ({ key }) => key);
    const shared = [...early].flatMap(([key, first]) => {
      const second = late.get(key);
      if (!second || Math.min(daysOf(first), daysOf(second)) < LEAST_DAYS) return [];
      return [{ first, second, done: first.length + second.length }];
    });
    if (shared.length === 0) return [];
    const { first, second } = shared.reduce((a, b) => (b.done > a.done ? b : a));
    const [from, to] = [heaviest(first), heaviest(second)];
    const gymGain = (to.barKg - from.barKg) / before.barKg;
    if (Math.abs(gymGain) > MOST_GAIN) return [];
    return [
      {
        step,
        from,
        to,
        fromDays: daysOf(first),
        toDays: daysOf(second),
        lifterId: before.lifterId,
        gymGain,
        platformGain: (after.barKg - before.barKg) / before.barKg,
        equipped: after.equipment !== 'raw',
      },
    ];
  });
}

/** What was done in the days before a meet, and after the one before it. */
function windowOf(lifts: readonly HardLift[], meetOn: string, after: string): HardLift[] {
  const first = new Date(Date.parse(meetOn) - WINDOW_DAYS * MS_A_DAY).toISOString().slice(0, 10);
  return lifts.filter(({ doneOn }) => doneOn >= first && doneOn < meetOn && doneOn > after);
}

function heaviest(lifts: readonly HardLift[]): HardLift {
  return lifts.reduce((a, b) => (b.barKg > a.barKg ? b : a));
}

function daysOf(lifts: readonly HardLift[]): number {
  return new Set(lifts.map(({ doneOn }) => doneOn)).size;
}

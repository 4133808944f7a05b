import type { DayAsked, Method } from '#contract/records/method.ts';
import { beside, walk } from '#contract/season/shipped/parts.ts';

/** What another entry of a list begins as, to be changed. Common practice, no source, as in the methods that come with the program. */
export const firstAccessory: DayAsked['accessories'][number] = beside[1]!;
export const firstSled: DayAsked['sleds'][number] = walk;
/** A few hard pushes of some seconds in the middle of the way. Common practice, no source. */
export const firstHold: DayAsked['holds'][number] = {
  title: 'Against pins',
  lift: 'squat',
  places: [0.5],
  seconds: 5,
  sets: 3,
};

/** A squat of so many body masses is where strong lifters begin to take more band. Common practice, no source, as in the equipped method. */
export const firstLevelTimesBodyMass = 3.5;
/** How much stronger those of another level are. Common practice, no source. */
export const levelStepTimesBodyMass = 0.5;

/** What a limit begins at once it is looked at. Common practice, no source, as in the equipped method. */
export const firstLimits: { [Limit in keyof Method['limits']]: number } = {
  mostHeavyLiftsAWeek: 30,
  mostRise: 0.3,
  mostWeeksOnOneBandShare: 6,
};

export const firstSource: Method['sources'][number] = {
  of: 'Sets, reps and rests',
  source: 'common practice, no source',
};

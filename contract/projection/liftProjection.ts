import { z } from 'zod';
import { equipment, lift } from '#contract/records/lift.ts';
import { belief } from '#contract/strength/strengthEstimate.ts';

const n = z.number();
const date = z.iso.date();

/** What is believed of a single at the meet: the middle and the ranges that hold it with 50, 80 and 95 %. */
const meetDayBelief = z.strictObject({ ...belief.shape, low50: n, high50: n });

/** The trade's rule: what was made at the last meet, and as much more as the best at one exact gym setup has grown since. */
const ruleOfThumb = z.strictObject({
  barKg: n,
  lastMeetOn: date,
  lastMeetKg: n,
  gainKg: n,
});
export type RuleOfThumb = z.infer<typeof ruleOfThumb>;

/** One lift of a lifter on the day of a meet: straight, by the rules of competition, kg on the bar. */
export const liftProjection = z.strictObject({
  lifterId: z.string(),
  lift,
  on: date,
  /** The day up to which the log was read. */
  from: date,
  equipment,
  /** What the last weeks' plan is taken to add, as a share: an assumption of whoever asks. */
  taperShare: n,
  bodyMassKg: n,
  maxKg: meetDayBelief,
  /** Chance that each bar is made, in steps of 2.5 kg from what is nearly sure to what is nearly out of reach. */
  chances: z.array(z.strictObject({ barKg: n, chance: n })),
  /** What this lifter does on the platform over an average gym day, as a share, leaning on the club's. */
  platformShare: belief,
  /** Meets of this lifter and lift that it is learned from; 0: it is the club's alone. */
  meets: z.number().int().nonnegative(),
  /** Heaviest straight lift in this equipment so far. */
  bestSoFarKg: n.nullable(),
  /** Null where there is no meet yet, or no setup done hard before it and since. */
  rule: ruleOfThumb.nullable(),
});
export type LiftProjection = z.infer<typeof liftProjection>;

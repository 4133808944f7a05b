import { z } from 'zod';
import { knownHow } from '#contract/records/knownHow.ts';
import { equipment, lift } from '#contract/records/lift.ts';
import { unitSlipKinds } from '#core/strength/unitSlips.ts';

const n = z.number();
const date = z.iso.date();

/** The middle of what is believed, and the ranges that hold it with 80 and 95 %. */
export const belief = z.strictObject({ median: n, low80: n, high80: n, low95: n, high95: n });
export type Belief = z.infer<typeof belief>;

/**
 * What a lifter's whole log says of one lift on one day. Masses are kg on the bar of the straight competition lift,
 * raw, on an average rested day, unless they say otherwise.
 */
export const strengthEstimate = z.strictObject({
  lifterId: z.string(),
  lift,
  on: date,
  /** Sets it rests on. */
  setCount: z.number().int(),
  /**
   * How many of them were taken in alone since the whole log was last weighed, the newest ones; 0: none. Their surprises, the
   * course before them and the rise follow when it is weighed again.
   */
  takenIn: z.number().int().nonnegative().default(0),
  lastSetOn: date.nullable(),
  bodyMassKg: n,
  bodyMassKnown: knownHow,
  maxKg: belief,
  /** The same in the supportive equipment that the log knows of this lifter. */
  inEquipment: z.array(z.strictObject({ equipment, maxKg: belief })),
  /** Every number that was learned, by its name in docs/model.md, beside what was believed before any set. */
  parameters: z.array(z.strictObject({ name: z.string(), now: belief, before: belief })),
  /** Strength over time, a point a week and one at the end, each with the whole log known. */
  history: z.array(z.strictObject({ on: date, ...belief.shape })),
  /** How strength changed over the last weeks, as shares of the maximum: see core/strength/stall.ts. */
  rise: z
    .array(
      z.strictObject({ weeks: z.number().int().positive(), probability: n, median: n, low80: n, high80: n }),
    )
    .default([]),
  /** Where each set acted, oldest first. */
  observations: z.array(
    z.strictObject({
      setId: z.string(),
      on: date,
      /** `atLeast`: it was made; `lessThan`: it was missed; `near`: its speed or the reps left say nearly how much. */
      says: z.enum(['atLeast', 'lessThan', 'near']),
      /** The straight bar that it stands for. */
      straightKg: n,
      /** In standard deviations, given all sets before it; beyond 3 either way it was hardly believed. Null: not yet weighed so. */
      surprise: n.nullable(),
      /** How far it moved the middle of the estimate of its day, in kg. */
      movedKg: n,
    }),
  ),
  /** Sets and bests, oldest first, that look as if their bars had been written down in another unit: kept out until somebody looked. */
  slips: z.array(z.strictObject({ looksLike: z.enum(unitSlipKinds), ids: z.array(z.string()) })).default([]),
  /** Sets and bests that could not be worked out, each with the reason in a sentence. */
  leftOut: z.array(z.strictObject({ id: z.string(), reason: z.string() })),
  /** Equally likely answers to `what can this lifter do today`, for working out any setup: see core/strength/Draw.ts. */
  draws: z.array(z.record(z.string(), n)),
});
export type StrengthEstimate = z.infer<typeof strengthEstimate>;

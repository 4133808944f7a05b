import { z } from 'zod';
import { localDate, note, recordId } from './kind.ts';
import { equipment, lift, setup } from './lift.ts';

const speedsMps = z.array(z.number().min(0).max(5)).max(50).default([]);
/** More than anybody does in a day. */
export const mostInDay = 1000;
const order = z.number().int().min(1).max(mostInDay);

const whatWasDone = {
  lifterId: recordId,
  doneOn: localDate,
  lift,
  equipment: equipment.default('raw'),
  setup,
  /** True: somebody looked at the bar since it seemed to be a slip of unit, and it is right. */
  barChecked: z.boolean().default(false),
  /** Reps that were asked for. */
  reps: z.number().int().min(1).max(50),
  /** Reps that were made. */
  made: z.number().int().min(0).max(50),
  /** Where a miss stopped: 0 at the bottom of the lifter's full range, 1 at its lockout. Only of a set with a miss. */
  stoppedAtS: z.number().min(-0.2).max(1).nullable().default(null),
  /** Mean speeds of the way up: one for each rep made, or a single one, that of the fastest rep. */
  meanSpeedsMps: speedsMps,
  /** Peak speeds in the same manner. */
  peakSpeedsMps: speedsMps,
  /** How many more reps the lifter had left, in halves; 10 less an effort rating of the same scale. */
  repsInReserve: z.number().min(0).max(15).multipleOf(0.5).nullable().default(null),
  /** Rest before this set. */
  restS: z.number().int().min(0).max(7200).nullable().default(null),
  bodyMassKg: z.number().min(20).max(300).nullable().default(null),
  /** True at a meet. */
  platform: z.boolean().default(false),
  place: z.string().max(80).default(''),
  /** The training day from whose prescription it was entered. */
  dayId: recordId.nullable().default(null),
  /** Which number of that day's plan it was entered by; null: by none, or before sets knew. */
  planNumber: z.number().int().min(1).nullable().default(null),
  note,
};

/**
 * A set that was done, with everything that was on the bar. The log only grows: a set entered by mistake is struck
 * and stays readable. What hung on the bar is told by the pairs and hookups of the club; how hard they pulled that
 * day follows from the readings of that time.
 */
export const loggedSet = z
  .strictObject({
    id: recordId,
    ...whatWasDone,
    /** Counts the lifter's sets of that day, from 1, in the order in which they were done. */
    order,
    loggedAt: z.iso.datetime(),
    /** When it was struck as a mistake; null: it counts. */
    struckAt: z.iso.datetime().nullable().default(null),
  })
  .superRefine(agrees);
export type LoggedSet = z.infer<typeof loggedSet>;

/**
 * A set as it is entered. Without an order it comes after the lifter's sets of that day. Whoever enters it may give it an id: sent
 * again with that id, it is the same set.
 */
export const givenSet = z
  .strictObject({
    id: recordId.optional(),
    ...whatWasDone,
    order: order.nullable().default(null),
  })
  .superRefine(agrees);
export type GivenSet = z.infer<typeof givenSet>;

/** What nobody looked at. */
export const nothingSeen = {
  stoppedAtS: null,
  meanSpeedsMps: [],
  peakSpeedsMps: [],
  repsInReserve: null,
  restS: null,
  bodyMassKg: null,
  barChecked: false,
} satisfies Partial<GivenSet>;

type Done = z.infer<z.ZodObject<typeof whatWasDone>>;

/** What no field tells alone: reps, speeds and the miss, the start and its height. */
function agrees(set: Done, context: z.RefinementCtx): void {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  if (set.made > set.reps) refuse(['made'], `it must not be more than reps (${set.reps})`);
  if (set.stoppedAtS !== null && set.made === set.reps)
    refuse(['stoppedAtS'], 'it must be empty where every rep was made');
  for (const field of ['meanSpeedsMps', 'peakSpeedsMps'] as const) {
    const many = set[field].length;
    if (many > 1 && many !== set.made)
      refuse([field], `it must hold one speed, or one for each rep made (${set.made})`);
  }
  if (set.planNumber !== null && set.dayId === null)
    refuse(['planNumber'], 'it must be empty where no training day is named');
  const { way, heightM } = set.setup.start;
  const needsHeight = way !== 'free' && way !== 'paused';
  if (needsHeight && heightM === null)
    refuse(['setup', 'start', 'heightM'], `a start from ${way} needs its height`);
  if (!needsHeight && heightM !== null)
    refuse(['setup', 'start', 'heightM'], `a ${way} start has no height; leave it empty`);
}

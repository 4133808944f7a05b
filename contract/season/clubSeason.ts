import { z } from 'zod';
import { localDate, recordId } from '#contract/records/kind.ts';
import { equipment } from '#contract/records/lift.ts';
import { method } from '#contract/records/method.ts';
import { ownBox, seasonAsk, seasonPlan, seasonWarning, setByHand } from './seasonPlan.ts';

/** How strong a lifter is: the maximum that percentages refer to over body mass; null where either is not known. */
const timesBodyMass = z.number().nullable();

/** The class of body mass that a lifter means to be in at a meet; null: the heaviest, which has no upper limit. */
export const classOfLifter = z.strictObject({
  meetId: recordId,
  title: z.string(),
  date: localDate,
  upToKg: z.number().nullable(),
});
export type ClassOfLifter = z.infer<typeof classOfLifter>;

/** One lifter of a season. */
export const lifterOfSeason = z.strictObject({
  entryId: recordId,
  lifterId: recordId,
  /** Which of the plans is theirs, by its place; null: there is nothing to plan for. */
  plan: z.number().int().nullable(),
  /** Left out in plans that were taken before it was kept. */
  equipment: equipment.optional(),
  /** Where it was said, in the order of the meets; left out in plans that were taken before lifters had it. */
  classes: z.array(classOfLifter).optional(),
  timesBodyMass: z.strictObject({ squat: timesBodyMass, bench: timesBodyMass, deadlift: timesBodyMass }),
  /** One for each depth that the plan asks of them; left out where it asks for none. */
  ownBoxes: z.array(ownBox).optional(),
  /** Of this lifter alone; those of the plan stand with it. */
  warnings: z.array(seasonWarning),
});
export type LifterOfSeason = z.infer<typeof lifterOfSeason>;

/** A plan with what it was asked beside its method. */
export const askedPlan = seasonPlan.extend({
  closed: seasonAsk.shape.closed.removeDefault(),
  byHand: z.array(setByHand),
  /** None in plans that were taken before plans went by it. */
  held: seasonAsk.shape.held,
});
export type AskedPlan = z.infer<typeof askedPlan>;

/** A season of the club, worked out for everybody in it. Lifters of whom the same is asked share one plan. */
export const clubSeason = z.strictObject({
  seasonId: recordId,
  title: z.string(),
  fromOn: localDate,
  /** As it was when this was worked out. */
  method,
  plans: z.array(askedPlan),
  lifters: z.array(lifterOfSeason),
});
export type ClubSeason = z.infer<typeof clubSeason>;

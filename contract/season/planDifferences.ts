import { z } from 'zod';
import { localDate, recordId } from '#contract/records/kind.ts';
import { equipment, lift } from '#contract/records/lift.ts';
import { heldTo } from './heldTo.ts';
import { seasonAsk } from './seasonPlan.ts';

const meet = seasonAsk.shape.meets.element;
const closed = seasonAsk.shape.closed.removeDefault().element;
const upTo = z.strictObject({ upToKg: z.number().nullable() });
const versioned = z.strictObject({ title: z.string(), version: z.number() });

/** Why a lifter's plan differs from the one that was taken. */
export const differenceReason = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('method'), before: versioned, now: versioned }),
  z.strictObject({ code: z.literal('firstDay'), before: localDate, now: localDate }),
  z.strictObject({ code: z.literal('meetMoved'), title: z.string(), before: localDate, now: localDate }),
  z.strictObject({ code: z.literal('meetNew'), meet }),
  z.strictObject({ code: z.literal('meetGone'), meet }),
  z.strictObject({ code: z.literal('closedNew'), closed }),
  z.strictObject({ code: z.literal('closedGone'), closed }),
  z.strictObject({ code: z.literal('heldNew'), held: heldTo }),
  z.strictObject({ code: z.literal('heldGone'), held: heldTo }),
  /** What the lifter lifts in: percentages refer to another maximum. */
  z.strictObject({ code: z.literal('equipment'), before: equipment, now: equipment }),
  /** Which class of body mass the lifter means to be in at a meet; null: nobody said. */
  z.strictObject({
    code: z.literal('class'),
    title: z.string(),
    before: upTo.nullable(),
    now: upTo.nullable(),
  }),
  z.strictObject({ code: z.literal('byHand'), date: localDate, askedId: z.string() }),
  /** At a depth the lifter now has another box: heights were measured, or the club has other boxes. */
  z.strictObject({
    code: z.literal('ownBox'),
    aboveParallelM: z.number(),
    beforeM: z.number(),
    nowM: z.number(),
  }),
  z.strictObject({ code: z.literal('strength'), lift }),
]);
export type DifferenceReason = z.infer<typeof differenceReason>;

const what = z.enum(['new', 'gone', 'changed']);

export const groupDifference = z.strictObject({
  askedId: z.string(),
  title: z.string(),
  what,
  /** Of a changed one: in what it differs. */
  in: z.array(z.enum(['variant', 'aim', 'steps', 'rest'])),
});
export type GroupDifference = z.infer<typeof groupDifference>;

export const dayDifference = z.strictObject({
  date: localDate,
  title: z.string(),
  what,
  groups: z.array(groupDifference),
});
export type DayDifference = z.infer<typeof dayDifference>;

/** A week that is not as it was taken. */
export const weekDifference = z.strictObject({
  monday: localDate,
  /** Titles of its phase, null where none lies there; null as a whole: the same one. */
  phase: z.strictObject({ before: z.string().nullable(), now: z.string().nullable() }).nullable(),
  days: z.array(dayDifference),
});
export type WeekDifference = z.infer<typeof weekDifference>;

/** How the plan of one lifter differs from the one that was taken; only lifters of whom anything does are told. */
export const lifterDifference = z.strictObject({
  lifterId: recordId,
  what,
  why: z.array(differenceReason),
  weeks: z.array(weekDifference),
});
export type LifterDifference = z.infer<typeof lifterDifference>;

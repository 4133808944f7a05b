import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { lift } from '#contract/records/lift.ts';

/** What would give everybody of an hour the bands that a plan asks for. */
export const gearMend = z.discriminatedUnion('by', [
  /** Those who are left without train at another hour. */
  z.strictObject({ by: z.literal('anotherHour') }),
  /** Every rack gets the hookups of the others. */
  z.strictObject({ by: z.literal('hookups') }),
  z.strictObject({ by: z.literal('onePairMore'), widthMm: z.number() }),
  z.strictObject({ by: z.literal('oneRackMore') }),
  /** Training of the day lasts so long. */
  z.strictObject({ by: z.literal('longer'), minutes: z.int() }),
]);
export type GearMend = z.infer<typeof gearMend>;

/** Training days of one kind of work in a row that all have the same fault. */
const onDays = { fromOn: localDate, untilOn: localDate, days: z.number().int(), lift, title: z.string() };

/** Where racks, bands or the hour do not do for what a season asks; `gearWarningSentences` says them. */
export const gearWarning = z.discriminatedUnion('code', [
  z.strictObject({
    code: z.literal('gearShort'),
    ...onDays,
    /** Who is left without; which of them is the coach's choice. */
    names: z.array(z.string()).min(1),
    /** Of how many who train then. */
    of: z.number().int(),
    /** Of all bands at lockout, the least and the most that they train with. */
    bandShares: z.strictObject({ least: z.number(), most: z.number() }),
    /** False: the search was cut off, and there may be a way. */
    isMost: z.boolean(),
    /** Turns: the racks have too few in the hour, whatever hangs there. */
    lacking: z.enum(['turns', 'bands']),
    racks: z.int(),
    /** How many get their sets in at one rack. */
    aRack: z.int(),
    mends: z.array(gearMend),
  }),
  z.strictObject({
    code: z.literal('outOfReach'),
    ...onDays,
    name: z.string(),
    bandShare: z.number(),
    nearestShare: z.number(),
  }),
  z.strictObject({ code: z.literal('notJudged'), ...onDays, name: z.string() }),
  /** No rack takes the lift, whoever trains. */
  z.strictObject({ code: z.literal('noRack'), ...onDays }),
  /** No box of the club has that height, with or without mats; the nearest that one can build, null: the club has none. */
  z.strictObject({
    code: z.literal('noBox'),
    ...onDays,
    heightM: z.number(),
    nearestM: z.number().nullable(),
  }),
]);
export type GearWarning = z.infer<typeof gearWarning>;

import { z } from 'zod';
import { earliestDate, latestDate } from '#contract/records/dateRange.ts';
import { group } from '#contract/records/day.ts';
import { localDate } from '#contract/records/kind.ts';
import { knownHow } from '#contract/records/knownHow.ts';
import { lift, type Start } from '#contract/records/lift.ts';
import { accessory, hold, sled, startAsked } from '#contract/records/method.ts';
import { plannedByHand } from '#contract/records/season.ts';
import { heldTo } from './heldTo.ts';

/** What a season is planned from, beside its method. */
export const seasonAsk = z
  .strictObject({
    /** The first day that may be planned. */
    from: localDate,
    meets: z
      .array(z.strictObject({ title: z.string().trim().min(1).max(80), date: localDate }))
      .min(1)
      .max(12),
    /** Days without training: holidays, a closed gym, somebody away. */
    closed: z
      .array(z.strictObject({ from: localDate, until: localDate, why: z.string().trim().min(1).max(80) }))
      .max(60)
      .default([]),
    /** What the lifter is held to on the way: starts and shares keep to it. */
    held: z.array(heldTo).max(20).default([]),
  })
  .check(({ value: { from, meets, closed }, issues }) => {
    const wrong = (path: (string | number)[], message: string) =>
      issues.push({ code: 'custom', path, message, input: path.length });
    if (from < earliestDate || from > latestDate)
      wrong(['from'], `it must be from ${earliestDate} to ${latestDate}`);
    for (const [at, { date }] of meets.entries()) {
      const before = at === 0 ? from : meets[at - 1]!.date;
      if (date <= before) wrong(['meets', at, 'date'], `it must be after ${before}`);
      if (Date.parse(date) - Date.parse(from) > MOST_MS)
        wrong(['meets', at, 'date'], 'it must be within two years of from');
    }
    for (const [at, { from: first, until }] of closed.entries())
      if (until < first) wrong(['closed', at, 'until'], `it must not be before from, ${first}`);
  });
export type SeasonAsk = z.infer<typeof seasonAsk>;

const fields = plannedByHand.shape.shape;

/** Which box one lifter has where the plan asks for each lifter's own. */
export const ownBox = z.strictObject({
  aboveParallelM: z.number(),
  /** Where it should be, by the lifter's parallel box and how that is known. */
  wantedM: z.number(),
  known: knownHow,
  /** The nearest that the club can build of its boxes and mats; where it has no box, the wanted one to a centimetre. */
  heightM: z.number(),
});
export type OwnBox = z.infer<typeof ownBox>;

/** What the coach set of one group of a season. */
export const setByHand = z.strictObject({
  date: localDate,
  askedId: fields.askedId,
  instead: fields.instead,
});
export type SetByHand = z.infer<typeof setByHand>;

const MOST_MS = 2 * 366 * 86_400_000;

/** A group of a planned day: what a group of the day screen is, without its lifters, and what it came from. */
export const plannedGroup = group
  .pick({
    title: true,
    work: true,
    lift: true,
    aim: true,
    blocks: true,
    leastChance: true,
    bounds: true,
  })
  .extend({
    start: startAsked,
    /** The group of the method. */
    askedId: z.string(),
    variantId: z.string(),
    /** For those whose reference maximum is at least so many body masses; null: for those below the first level, or for all. */
    leastTimesBodyMass: z.number().nullable(),
    /** Of all bands at lockout, where the method asks for it. */
    bandShare: z.number().nullable(),
    /** What it comes to, as shares of the reference maximum; null where the aim names none. */
    lockoutShare: z.number().nullable(),
    meanShare: z.number().nullable(),
    /** The coach set something of it. */
    byHand: z.boolean(),
  });
export type PlannedGroup = z.infer<typeof plannedGroup>;

/** The same as one lifter does it: from a start that can be put up, with what is known of a box of their own. */
export type GroupOfLifter = Omit<PlannedGroup, 'start'> & { start: Start; ownBox?: OwnBox };

export const plannedDay = z.strictObject({
  date: localDate,
  title: z.string(),
  /** Why there is no training; null: there is. */
  closed: z.string().nullable(),
  groups: z.array(plannedGroup),
  accessories: z.array(accessory),
  sleds: z.array(sled),
  holds: z.array(hold),
});
export type PlannedDay = z.infer<typeof plannedDay>;

export const plannedWeek = z.strictObject({
  monday: localDate,
  /** ISO 8601, "2026-W53". */
  isoWeek: z.string(),
  phaseId: z.string().nullable(),
  /** From 1. */
  weekOfPhase: z.number().int().nullable(),
  wave: z.number().int().nullable(),
  weekOfWave: z.number().int().nullable(),
  /** Meets of this week, by their place in what was asked. */
  meets: z.array(z.number().int()),
  days: z.array(plannedDay),
  load: z.strictObject({
    lifts: z.number(),
    meanShare: z.number().nullable(),
    heavyLifts: z.number(),
    monotony: z.number().nullable(),
    sledWorkJ: z.number(),
  }),
});
export type PlannedWeek = z.infer<typeof plannedWeek>;

/** Day and week as one lifter has them. */
export type DayOfLifter = Omit<PlannedDay, 'groups'> & { groups: GroupOfLifter[] };
export type WeekOfLifter = Omit<PlannedWeek, 'days'> & { days: DayOfLifter[] };

const inWeek = { monday: localDate };
const onDay = { date: localDate, title: z.string() };

/** What a plan warns of, as data; `seasonWarningSentence` says it. */
export const seasonWarning = z.discriminatedUnion('code', [
  z.strictObject({
    code: z.literal('phaseCut'),
    phase: z.string(),
    weeks: z.number(),
    leastWeeks: z.number(),
    meet: z.string(),
  }),
  z.strictObject({ code: z.literal('openWeeks'), weeks: z.number(), ...inWeek }),
  z.strictObject({ code: z.literal('closedDay'), why: z.string(), ...onDay }),
  z.strictObject({
    code: z.literal('volume'),
    group: z.string(),
    reps: z.number(),
    mostReps: z.number(),
    zoneFrom: z.number(),
    zoneTo: z.number().nullable(),
    /** How far the method moved the zones of the table; plans that were taken before it was told have none. */
    zoneShift: z.number().default(0),
    ...onDay,
  }),
  z.strictObject({ code: z.literal('heavyLifts'), lifts: z.number(), most: z.number(), ...inWeek }),
  z.strictObject({
    code: z.literal('rise'),
    lifts: z.number(),
    before: z.number(),
    most: z.number(),
    ...inWeek,
  }),
  z.strictObject({
    code: z.literal('sameBands'),
    group: z.string(),
    bandShare: z.number(),
    weeks: z.number(),
    most: z.number(),
    ...inWeek,
  }),
  /** A start that comes again before it has rested as long as the method says: the coach chose it so. */
  z.strictObject({
    code: z.literal('tooSoon'),
    group: z.string(),
    variant: z.string(),
    weeks: z.number(),
    restWeeks: z.number(),
    ...onDay,
  }),
  /** What the coach set of a group that the plan does not have on that day any more. */
  z.strictObject({ code: z.literal('strayByHand'), date: localDate, askedId: z.string() }),
  /** A meet that nothing can be planned for from the first day of the season. */
  z.strictObject({ code: z.literal('meetLeftOut'), title: z.string(), date: localDate }),
  /** Bands differ by strength, and how strong this lifter is is not known: those below the first level have them. */
  z.strictObject({ code: z.literal('levelUnknown'), lift }),
  /** Somebody under 18 has heavy singles or bands on days ahead; the first of them, and how old they are then. */
  z.strictObject({ code: z.literal('minor'), age: z.number(), days: z.number(), from: localDate }),
  /** The lifter's own box is far from where it should be: the club has none nearer. */
  ownBox.extend({ code: z.literal('boxFarOff') }),
  /** Days on which the plan has a lift in which the lifter is held to less; null: until further notice. */
  z.strictObject({
    code: z.literal('restricted'),
    lift,
    days: z.number(),
    from: localDate,
    until: localDate.nullable(),
  }),
]);
export type SeasonWarning = z.infer<typeof seasonWarning>;

/** From today to the last meet, week by week. */
export const seasonPlan = z.strictObject({
  methodId: z.string(),
  methodVersion: z.number(),
  meets: z.array(z.strictObject({ title: z.string(), date: localDate })),
  weeks: z.array(plannedWeek),
  warnings: z.array(seasonWarning),
});
export type SeasonPlan = z.infer<typeof seasonPlan>;

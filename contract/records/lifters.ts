import { z } from 'zod';
import { heightM, kind, localDate, note, recordId } from './kind.ts';
import { equipment, lift, setup, start } from './lift.ts';

/** What is known of a person as a rule: part of a lifter, and fed to plans and estimates. */
const ofLifter = {
  belongsTo: { lifterId: 'lifter' },
  uses: {},
  feeds: { plan: 'all', estimate: 'all' },
  date: null,
  isFixed: false,
  sinceArchive: 1,
  filesAt: 'club',
} as const;

/** What plans and estimates rest on: labels are for the eye. */
const withoutLabels = ['name', 'bornOn', 'category', 'statureM', 'equipment', 'leftOn'] as const;

export const lifter = kind(
  'lifter',
  'lifter',
  {
    name: z.string().trim().min(1).max(80),
    bornOn: localDate.nullable().default(null),
    category: z.enum(['women', 'men', 'other']),
    statureM: z.number().min(1).max(2.5).nullable().default(null),
    equipment: equipment.default('raw'),
    leftOn: localDate.nullable().default(null),
    /** The club's own words for whom it trains together, or tells apart: a crew, a year, a meet. */
    labels: z.array(z.string().trim().min(1).max(30)).max(8).default([]),
    note,
  },
  {
    ...ofLifter,
    many: 'lifters',
    belongsTo: {},
    feeds: { plan: withoutLabels, estimate: withoutLabels },
    date: { field: 'bornOn', isPast: true, knownFrom: false },
    ratherThanRemoved: 'enter the day of leaving instead',
  },
);
export type Lifter = z.infer<typeof lifter.shape>;

export const bodyMass = kind(
  'bodyMass',
  'body mass',
  {
    lifterId: recordId,
    takenOn: localDate,
    massKg: z.number().min(20).max(300),
  },
  { ...ofLifter, many: 'body masses', date: { field: 'takenOn', isPast: true, knownFrom: true } },
);
export type BodyMass = z.infer<typeof bodyMass.shape>;

/** Bar heights of one lifter: the full competition range (`free`), or the bottom on a box, boards and so on. */
export const liftHeights = kind(
  'liftHeights',
  'measured heights',
  {
    lifterId: recordId,
    lift,
    start,
    bottomM: heightM.max(2.5),
    lockoutM: heightM.max(3),
    /** Where the bar is at the bottom, in front of (+) or behind (-) its place at lockout; null: not measured. */
    bottomForwardM: z.number().min(-0.4).max(0.4).nullable().default(null),
    measuredOn: localDate,
  },
  { ...ofLifter, many: 'measured heights', date: { field: 'measuredOn', isPast: true, knownFrom: true } },
  ({ bottomM, lockoutM }) =>
    lockoutM > bottomM ? null : { field: 'lockoutM', allowed: 'it must be higher than the bottom' },
);
export type LiftHeights = z.infer<typeof liftHeights.shape>;

/** A maximum that was made, with everything that was on the bar. */
export const best = kind(
  'best',
  'best',
  {
    lifterId: recordId,
    lift,
    doneOn: localDate,
    place: z.string().max(80).default(''),
    /** True at a meet. */
    platform: z.boolean().default(false),
    equipment: equipment.default('raw'),
    setup,
    note,
  },
  {
    ...ofLifter,
    many: 'bests',
    uses: {
      'setup.rackId': 'rack',
      'setup.bands[].bandPairId': 'bandPair',
      'setup.bands[].hookupId': 'hookup',
      'setup.chains[].chainPairId': 'chainPair',
    },
    date: { field: 'doneOn', isPast: true, knownFrom: true },
  },
);
export type Best = z.infer<typeof best.shape>;

/** Injury, illness or a coach's order: what a lifter may not do, from a day until another. */
export const restriction = kind(
  'restriction',
  'restriction',
  {
    lifterId: recordId,
    lift,
    /** Nothing deeper than on a box of this height; another start counts by where it holds the bar. Null: as deep as wanted. */
    leastBoxM: heightM.min(0.05).max(1.5).nullable().default(null),
    /** At most this share of the maximum that percentages refer to. Null: any. */
    mostShare: z.number().min(0.05).max(1.5).nullable().default(null),
    /** What the share is of: the bar with collars, or all that is held at lockout, bands and chains with it. */
    shareOf: z.enum(['bar', 'lockout']).default('bar'),
    fromOn: localDate,
    /** The last day of it; null: until somebody ends it. */
    untilOn: localDate.nullable().default(null),
    note,
  },
  {
    ...ofLifter,
    many: 'restrictions',
    feeds: { plan: 'all' },
    date: { field: 'fromOn', isPast: false, knownFrom: true },
    sinceArchive: 3,
  },
  ({ lift, leastBoxM, mostShare, fromOn, untilOn }) => {
    if (leastBoxM === null && mostShare === null)
      return {
        field: 'mostShare',
        allowed: 'say how deep this lifter may go, or how much the load may be',
      };
    if (leastBoxM !== null && lift !== 'squat')
      return { field: 'leastBoxM', allowed: 'it must be empty for a lift without a box' };
    return untilOn !== null && untilOn < fromOn
      ? { field: 'untilOn', allowed: 'it must be no earlier than the first day' }
      : null;
  },
);
export type Restriction = z.infer<typeof restriction.shape>;

/** Whether a restriction holds on a day: its first and its last day counted. */
export function holdsOn({ fromOn, untilOn }: Pick<Restriction, 'fromOn' | 'untilOn'>, day: string): boolean {
  return fromOn <= day && (untilOn === null || day <= untilOn);
}

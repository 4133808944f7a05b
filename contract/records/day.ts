import { z } from 'zod';
import { bounds } from './bounds.ts';
import { kind, localDate, note, recordId } from './kind.ts';
import { lift, setup, start } from './lift.ts';

/** What a percentage counts: the bar alone, or bar and bands at the bottom, at lockout, on average over the range. */
export const basis = z.enum(['bar', 'bottom', 'lockout', 'mean']);

/** What the loads of a group aim at. Shares are fractions: 0.6 is 60 %. */
export const aim = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('percent'),
    /** Each asks for a share of the lifter's reference maximum, counted on its basis. */
    targets: z
      .array(z.strictObject({ basis, share: z.number().min(0.05).max(2) }))
      .min(1)
      .max(4),
  }),
  z.strictObject({
    by: z.literal('capability'),
    bottomShare: z.number().min(0.1).max(1.2),
    lockoutShare: z.number().min(0.1).max(1.2),
  }),
  z.strictObject({
    by: z.literal('speed'),
    fromMps: z.number().min(0.05).max(2.5),
    toMps: z.number().min(0.05).max(2.5),
    /** Whose mean speed lies in the zone: that of the first rep, or of all reps of a set. Left out: the first rep. */
    of: z.enum(['firstRep', 'set']).optional(),
  }),
]);
export type Aim = z.infer<typeof aim>;

/** One step of the group's work. `shareOfAim` scales the bar load of work-up steps; 1 is the aim itself. */
export const block = z.strictObject({
  sets: z.number().int().min(1).max(30),
  reps: z.number().int().min(1).max(30),
  restSeconds: z.number().int().min(0).max(1200),
  shareOfAim: z.number().min(0.1).max(1.1).default(1),
});
export type Block = z.infer<typeof block>;

/** One lifter in a group: where, and what the coach fixed by hand. */
export const place = z.strictObject({
  lifterId: recordId,
  rackId: recordId,
  /** This lifter's own start, where it differs from the group's (a lower box, say). */
  start: start.nullable().default(null),
  /** Set by the coach: stays, and the rest is solved around it. Null: solved. */
  byCoach: z
    .strictObject({
      barKg: z.number().min(0).max(1000).nullable(),
      bands: setup.shape.bands.nullable(),
      chains: setup.shape.chains.nullable(),
    })
    .nullable()
    .default(null),
  /** By how much more of the maximum than the group this lifter aims at: 0.05 is five points. */
  moreShare: z.number().min(-0.3).max(0.3).default(0),
  /** What the coach wants this lifter to know that day; on sheet and card. */
  note: z.string().trim().max(200).default(''),
});
export type Place = z.infer<typeof place>;

export const group = z.strictObject({
  id: z.string().min(1).max(64),
  title: z.string().trim().min(1).max(60),
  work: z.enum(['speed', 'maximal', 'repeated']),
  lift,
  start,
  aim,
  blocks: z.array(block).min(1).max(12),
  /** Bars are lightened until all reps are made with at least this chance, by each lifter's whole log; null: as aimed. */
  leastChance: z.number().min(0.5).max(0.99).nullable().default(null),
  /** What its proposals keep to; null: the club's own bounds. */
  bounds: bounds.nullable().default(null),
  /** Lifters in lifting order. */
  places: z.array(place).max(60),
  /** The group of a season's plan that it was taken from, with a mark of it as it was then; left out: it came from none. */
  planned: z
    .strictObject({
      seasonId: recordId,
      askedId: z.string(),
      mark: z.string(),
      /** Where the plan asks for each lifter's own box: whom it put on which. Who sits on another now was put there by the coach. */
      boxes: z
        .array(z.strictObject({ lifterId: recordId, heightM: z.number().min(0).max(3) }))
        .max(60)
        .optional(),
    })
    .optional(),
  /** Who belongs to the group and is not here that day; each keeps rack, start and what was set by hand. */
  away: z.array(place).max(60).default([]),
});
export type Group = z.infer<typeof group>;

/** A training day as the coach plans it. Groups run one after another; lifters of a group share the racks at once. */
export const day = kind(
  'day',
  'training day',
  {
    date: localDate,
    title: z.string().max(80).default(''),
    groups: z.array(group).max(8),
    /** 0: each lifter their own bands, whatever the changes cost. 1: one band set for the whole rack. */
    oneSetPull: z.number().min(0).max(1).default(0.5),
    note,
  },
  {
    many: 'training days',
    belongsTo: {},
    uses: {
      'groups[].places[].lifterId': 'lifter',
      'groups[].places[].rackId': 'rack',
      'groups[].places[].byCoach.bands[].bandPairId': 'bandPair',
      'groups[].places[].byCoach.bands[].hookupId': 'hookup',
      'groups[].places[].byCoach.chains[].chainPairId': 'chainPair',
      'groups[].away[].lifterId': 'lifter',
      'groups[].away[].rackId': 'rack',
      'groups[].away[].byCoach.bands[].bandPairId': 'bandPair',
      'groups[].away[].byCoach.bands[].hookupId': 'hookup',
      'groups[].away[].byCoach.chains[].chainPairId': 'chainPair',
    },
    // A plan rests on its own day alone; see `planBasis`.
    feeds: {},
    date: { field: 'date', isPast: false, knownFrom: true },
    isFixed: false,
    sinceArchive: 1,
    filesAt: 'club',
  },
);
export type Day = z.infer<typeof day.shape>;

import { z } from 'zod';
import { heightM, kind, label, localDate, massKg, note, recordId } from './kind.ts';
import { lift } from './lift.ts';

/** Gear as a rule: it says what hangs on a bar, so that plans and estimates rest on it. */
const ofGear = {
  belongsTo: {},
  uses: {},
  feeds: { plan: 'all', estimate: 'all' },
  date: null,
  isFixed: false,
  sinceArchive: 1,
  filesAt: 'ownTable',
} as const;

export const bar = kind(
  'bar',
  'bar',
  {
    label,
    massKg: massKg.max(100),
    /** True when the mass was read on a scale, false when it is the maker's figure. */
    weighed: z.boolean().default(false),
    note,
  },
  { ...ofGear, many: 'bars', feeds: { plan: 'all' } },
);

export const collarPair = kind(
  'collarPair',
  'collar pair',
  {
    label,
    /** Mass of both collars together. */
    pairMassKg: z.number().min(0).max(20),
    pairs: z.number().int().min(0).max(50),
    note,
  },
  { ...ofGear, many: 'collar pairs', feeds: { plan: 'all' } },
);

export const disc = kind(
  'disc',
  'disc',
  {
    /** The mass on the disc's face. */
    faceMassKg: massKg.max(100),
    pairs: z.number().int().min(0).max(100),
    /** What one disc of this kind really weighs, where the club weighed it. */
    weighedMassKg: massKg.max(100).nullable().default(null),
    diameterM: z.number().positive().max(1).nullable().default(null),
    thicknessM: z.number().positive().max(0.3).nullable().default(null),
    note,
  },
  { ...ofGear, many: 'kinds of disc', feeds: { plan: 'all' } },
);

export const bandWidthMm = z.number().min(3).max(200);
/** Relaxed loop, end to end. */
export const restLengthM = z.number().min(0.1).max(3);

/** Two loops of the same width that hang one on each side of the bar, a and b. */
export const bandPair = kind(
  'bandPair',
  'band pair',
  {
    label,
    widthMm: bandWidthMm,
    restLengthAM: restLengthM,
    restLengthBM: restLengthM.nullable().default(null),
    /** The number trade habit adds to the bar for the pair at lockout, if the coach keeps one. */
    nominalKg: z.number().min(0).max(500).nullable().default(null),
    installedOn: localDate.nullable().default(null),
    cycles: z.number().int().min(0).max(1_000_000).default(0),
    retiredOn: localDate.nullable().default(null),
    note,
  },
  { ...ofGear, many: 'band pairs', ratherThanRemoved: 'enter the day of its retirement instead' },
);
export type BandPair = z.infer<typeof bandPair.shape>;

/** One look at the scale: loop length under force. Appended, never changed. */
export const bandReading = kind(
  'bandReading',
  'band reading',
  {
    bandPairId: recordId,
    side: z.enum(['a', 'b']),
    takenOn: localDate,
    lengthM: z.number().min(0.1).max(9),
    forceN: z.number().positive().max(10_000),
    direction: z.enum(['loading', 'unloading']).default('loading'),
  },
  {
    ...ofGear,
    many: 'band readings',
    belongsTo: { bandPairId: 'bandPair' },
    date: { field: 'takenOn', isPast: true, knownFrom: true },
    isFixed: true,
  },
);
export type BandReadingRecord = z.infer<typeof bandReading.shape>;

export const chainPair = kind(
  'chainPair',
  'chain pair',
  {
    label,
    /** Mass per metre of one chain as it hangs. */
    massPerMetreKg: z.number().positive().max(60),
    lengthM: z.number().positive().max(6),
    /** How far below the bar the chain's first link hangs (leader). */
    attachBelowBarM: z.number().min(0).max(2).default(0),
    pairs: z.number().int().min(0).max(20).default(1),
    note,
  },
  { ...ofGear, many: 'kinds of chain' },
);

/** A box to sit on, or a mat that raises one. */
export const box = kind(
  'box',
  'box',
  {
    label,
    sort: z.enum(['box', 'mat']).default('box'),
    heightM: heightM.max(1.5),
    pieces: z.number().int().min(0).max(20).default(1),
    note,
  }, // A start carries the height itself; a plan says what it is built of.
  { ...ofGear, many: 'boxes and mats', feeds: { plan: 'all' } },
);
export type Box = z.infer<typeof box.shape>;

export const rack = kind(
  'rack',
  'rack',
  {
    label,
    lifts: z.array(lift).min(1),
    barId: recordId.nullable().default(null),
    collarPairId: recordId.nullable().default(null),
    /** Chains may be hung at this rack. */
    takesChains: z.boolean().default(false),
    /** Height of the bench pad above the floor, where the rack has a bench. */
    benchHeightM: heightM.max(1).nullable().default(null),
    note,
  },
  { ...ofGear, many: 'racks', uses: { barId: 'bar', collarPairId: 'collarPair' } },
);
export type Rack = z.infer<typeof rack.shape>;

/**
 * A point on the rack that a band can hang on, one on each side alike. `xM` fore-aft (+ to the lifter's
 * front, 0 under the bar at the start), `yM` sideways from the sleeve's band position, `zM` above the floor.
 */
export const anchor = kind(
  'anchor',
  'anchor point',
  {
    rackId: recordId,
    label,
    xM: z.number().min(-2).max(2).default(0),
    yM: z.number().min(-2).max(2).default(0),
    zM: heightM,
    /** What one anchor point may carry, by its maker or the coach; null where unknown. */
    ratedLoadN: z.number().positive().max(100_000).nullable().default(null),
  },
  { ...ofGear, many: 'anchor points', belongsTo: { rackId: 'rack' } },
);
export type AnchorRecord = z.infer<typeof anchor.shape>;

/** A way of hanging a pair of bands that is in use at a rack. */
export const hookup = kind(
  'hookup',
  'hookup',
  {
    rackId: recordId,
    anchorId: recordId,
    label,
    way: z.enum(['single', 'doubled', 'choked']),
    /** Length of the loop that the choke uses up; only for `choked`. */
    spentM: z.number().min(0).max(1).nullable().default(null),
    lifts: z.array(lift).min(1),
  },
  { ...ofGear, many: 'hookups', belongsTo: { rackId: 'rack' }, uses: { anchorId: 'anchor' } },
  ({ way, spentM }) => {
    if (way === 'choked')
      return spentM === null ? { field: 'spentM', allowed: 'a choked band needs it' } : null;
    return spentM === null
      ? null
      : { field: 'spentM', allowed: 'it must be empty unless the band is choked' };
  },
);
export type HookupRecord = z.infer<typeof hookup.shape>;

/** Vertical pull of a pair in a hookup, read on a scale at a bar height: it overrules the geometry. */
export const scaleReading = kind(
  'scaleReading',
  'scale reading',
  {
    hookupId: recordId,
    bandPairId: recordId,
    takenOn: localDate,
    barHeightM: heightM,
    /** Both bands together; down is positive. */
    pairForceN: z.number().min(-5000).max(10_000),
  },
  {
    ...ofGear,
    many: 'readings under the bar',
    belongsTo: { hookupId: 'hookup', bandPairId: 'bandPair' },
    date: { field: 'takenOn', isPast: true, knownFrom: true },
  },
);

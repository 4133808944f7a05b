import { z } from 'zod';
import { type Bounds, bounds } from './bounds.ts';
import { kind, note, timeOfDay } from './kind.ts';
import { weeksToBars } from './method.ts';

const boundNames = Object.keys(bounds.shape) as (keyof Bounds)[];

/** Settings of the one club; every other record belongs to it. */
export const club = kind(
  'club',
  'club',
  {
    name: z.string().trim().min(1).max(80),
    /** True when the club and its people are made up, as in the demo; shown on screen and paper. */
    invented: z.boolean().default(false),
    /** Decides which day is today. */
    timeZone: z
      .string()
      .refine(isTimeZone, 'it must be a time zone such as Europe/London')
      .meta({ format: 'time-zone' })
      .default('UTC'),
    massUnit: z.enum(['kg', 'lb']).default('kg'),
    lengthUnit: z.enum(['cm', 'in']).default('cm'),
    /** With both known, local gravity is computed; otherwise standard gravity is used and said. */
    latitudeDeg: z.number().min(-90).max(90).nullable().default(null),
    heightAboveSeaM: z.number().min(-500).max(6000).nullable().default(null),
    /** Minutes to take one pair of bands off or put one on. */
    bandChangeMinutes: z.number().min(0).max(10).default(1),
    /** When training usually begins, by the club's clock: 18:30; null: nobody said, and a day in the calendar is a whole day. */
    trainingStartsAt: timeOfDay.nullable().default(null),
    /** How long it usually lasts. Common practice, no source. */
    trainingMinutes: z.number().int().min(15).max(720).default(120),
    /** Whether the calendar, which may be read on telephones, says who trains: by first name, nothing else of anybody. */
    namesInCalendar: z.boolean().default(false),
    /** On the wall bar and collars together count to this step and discs by their faces, the true mass beside it; null: as they weigh. */
    wallStepKg: z.number().min(0.1).max(5).nullable().default(null),
    /** Two bands of a pair that differ by more than this share are flagged. Assumption: 0.05. */
    pairMismatchShare: z.number().min(0.005).max(0.5).default(0.05),
    /** A band stretched beyond this ratio is flagged. Assumption: 2.5; the maker's figure rules. */
    safeStretchRatio: z.number().min(1.2).max(6).default(2.5),
    /** What a proposal keeps to, of the reference maximum; a group may have its own. Common practice, no source. */
    ...bounds.shape,
    remeasureAfterDays: z.number().int().min(1).max(3650).default(180),
    remeasureAfterCycles: z.number().int().min(1).max(1_000_000).default(5000),
    /** So many weeks of every season from today on are worked out to bar and bands; null: as many as its method says. */
    nearWeeks: weeksToBars.nullable().default(null),
    note,
  },
  {
    many: 'settings',
    belongsTo: {},
    uses: {},
    feeds: {
      plan: [
        'latitudeDeg',
        'heightAboveSeaM',
        'bandChangeMinutes',
        'pairMismatchShare',
        'safeStretchRatio',
        ...boundNames,
      ],
      estimate: ['latitudeDeg', 'heightAboveSeaM'],
    },
    date: null,
    isFixed: false,
    sinceArchive: 1,
    filesAt: 'club',
  },
);
export type Club = z.infer<typeof club.shape>;

function isTimeZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

import { z } from 'zod';
import { bounds } from './bounds.ts';
import { basis, block } from './day.ts';
import { localDate } from './kind.ts';
import { lift, start } from './lift.ts';

const id = z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'it must be lower-case letters, digits and hyphens');
const title = z.string().trim().min(1).max(60);
const says = z.string().trim().max(600).default('');
const share = z.number().min(0.05).max(2);
const mps = z.number().min(0.05).max(2.5);
/** Weeks from today on that are worked out to bar and bands; 0: none. */
export const weeksToBars = z.number().int().min(0).max(8);

/** As many as each list may have. */
export const mostOf = {
  phases: 20,
  groups: 8,
  variants: 12,
  /** By week of the wave, or by wave. */
  inTurn: 12,
  levels: 4,
  accessories: 12,
  sleds: 6,
  holds: 6,
  places: 5,
  sources: 20,
} as const;

/** One entry for each week of a wave, or for each wave of a phase; the last one stands for those that follow. */
const inTurn = <Each extends z.ZodType>(each: Each) => z.array(each).min(1).max(mostOf.inTurn);

/** What the loads of a group aim at, week by week; each comes to an aim of the day screen. */
export const aimInTurn = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('percent'),
    /** Shares of the reference maximum by week of the wave. */
    targets: z
      .array(z.strictObject({ basis, shares: inTurn(share) }))
      .min(1)
      .max(4),
  }),
  z.strictObject({
    by: z.literal('barAndBands'),
    /** On the bar alone, by week of the wave. */
    barShares: inTurn(share),
    /** Of all bands at lockout, by wave of the phase: what steps from wave to wave. */
    bandShares: inTurn(z.number().min(0).max(1)),
    /** For the strong, by how many body masses the reference maximum is at least; those below the first have `bandShares`. */
    levels: z
      .array(
        z.strictObject({
          leastTimesBodyMass: z.number().min(0.5).max(6),
          bandShares: inTurn(z.number().min(0).max(1)),
        }),
      )
      .max(mostOf.levels)
      .default([]),
  }),
  z.strictObject({
    by: z.literal('capability'),
    bottomShares: inTurn(z.number().min(0.1).max(1.2)),
    lockoutShares: inTurn(z.number().min(0.1).max(1.2)),
  }),
  z.strictObject({
    by: z.literal('speed'),
    zones: inTurn(z.strictObject({ fromMps: mps, toMps: mps })),
    of: z.enum(['firstRep', 'set']).default('firstRep'),
  }),
]);
export type AimInTurn = z.infer<typeof aimInTurn>;

/** A box that each lifter of a squat has at a height of their own: so far above the box on which that lifter is at parallel; less than nought is below it. */
export const ownBox = z.strictObject({
  way: z.literal('ownBox'),
  aboveParallelM: z.number().min(-0.15).max(0.3),
});

/** A start as the day screen has it, the same for everybody, or each lifter's own box. */
export const startAsked = z.discriminatedUnion('way', [start, ownBox]);
export type StartAsked = z.infer<typeof startAsked>;

/** A way to do the lift of a group, one of those that it rotates through. */
export const variant = z.strictObject({ id, title, start: startAsked });
export type Variant = z.infer<typeof variant>;

/** Work of a training day as a group of the day screen does it. */
export const groupAsked = z.strictObject({
  id,
  title,
  work: z.enum(['speed', 'maximal', 'repeated']),
  lift,
  /** One: always the same start. More: rotated through. */
  variants: z.array(variant).min(1).max(mostOf.variants),
  /** Weeks that pass before the same variant comes again, where there are more than one. */
  restWeeks: z.number().int().min(0).max(12).default(0),
  aim: aimInTurn,
  /** Steps by week of the wave. */
  blocks: inTurn(z.array(block).min(1).max(12)),
  leastChance: z.number().min(0.5).max(0.99).nullable().default(null),
  bounds: bounds.nullable().default(null),
});
export type GroupAsked = z.infer<typeof groupAsked>;

/** Work beside the bar, in sets and reps; each lifter takes what is weak. */
export const accessory = z.strictObject({
  title,
  sets: z.number().int().min(1).max(20),
  reps: z.number().int().min(1).max(100),
});

/** A sled dragged over a floor: its mechanical work is friction times weight times way. */
export const sled = z.strictObject({
  title,
  trips: z.number().int().min(1).max(60),
  distanceM: z.number().min(1).max(500),
  massKg: z.number().min(1).max(500),
  /** Pull over weight on that floor, by the club's own scale. */
  friction: z.number().min(0.05).max(1.5),
});

/** Pushing against pins that do not move. */
export const hold = z.strictObject({
  title,
  lift,
  /** Where the bar stands in the lifter's own range: 0 at the bottom, 1 at lockout. */
  places: z.array(z.number().min(0).max(1)).min(1).max(mostOf.places),
  seconds: z.number().int().min(1).max(15),
  sets: z.number().int().min(1).max(10),
});

/** A training day of a phase. */
export const dayAsked = z.strictObject({
  /** ISO 8601: 1 is Monday. */
  weekday: z.number().int().min(1).max(7),
  title,
  groups: z.array(groupAsked).max(mostOf.groups),
  accessories: z.array(accessory).max(mostOf.accessories).default([]),
  sleds: z.array(sled).max(mostOf.sleds).default([]),
  holds: z.array(hold).max(mostOf.holds).default([]),
});

export type DayAsked = z.infer<typeof dayAsked>;

export const phaseAsked = z.strictObject({
  id,
  title,
  /** What it is for, in a coach's words. */
  goal: z.string().trim().min(1).max(600),
  /** Weeks of one wave; the phase grows by whole waves. */
  waveWeeks: z.number().int().min(1).max(12),
  leastWeeks: z.number().int().min(1).max(52),
  mostWeeks: z.number().int().min(1).max(52),
  /** Gone through again, with the others so marked, where there is more time than one round takes. */
  isRound: z.boolean().default(false),
  /** Where weeks lack, the phases with the lowest number keep theirs first. */
  keepsBefore: z.number().int().min(0).max(99),
  /** Laid only when there was a meet just before. */
  onlyAfterMeet: z.boolean().default(false),
  days: z.array(dayAsked).max(7),
});
export type PhaseOfMethod = z.infer<typeof phaseAsked>;

/** What a week should not go beyond; null: not looked at. */
export const limits = z.strictObject({
  /** Lifts at or above 90 % at lockout in a week, all lifts together. */
  mostHeavyLiftsAWeek: z.number().int().min(0).max(200).nullable().default(null),
  /** By how much the lifts of a week may exceed those of the week before. */
  mostRise: z.number().min(0).max(3).nullable().default(null),
  /** Weeks on the same band share; what a lifter is used to trains no more. */
  mostWeeksOnOneBandShare: z.number().int().min(1).max(52).nullable().default(null),
});

/** A way of training from some weeks ahead to a meet: a document that a coach reads, changes and keeps in versions. */
export const method = z
  .strictObject({
    format: z.literal('rackwright-method-1'),
    id,
    title,
    /** A new number for each change that was kept. */
    version: z.number().int().min(1).max(9999),
    madeOn: localDate,
    /** Whom it suits, and who should not follow it. */
    forWhom: z.string().trim().min(1).max(600),
    says,
    /** Where its figures come from; common practice says so. */
    sources: z
      .array(
        z.strictObject({ of: z.string().trim().min(1).max(200), source: z.string().trim().min(1).max(300) }),
      )
      .max(mostOf.sources),
    /** By how much the zones of the volume table are moved up for work with bands: 0.05 is five points. */
    zoneShift: z.number().min(-0.2).max(0.2).default(0),
    /** Left out: two. Where the club says how many, that leads. */
    nearWeeks: weeksToBars.optional(),
    limits,
    phases: z.array(phaseAsked).min(1).max(mostOf.phases),
  })
  .check(({ value, issues }) => {
    for (const wrong of wrongInMethod(value))
      issues.push({ code: 'custom', path: wrong.path, message: wrong.allowed, input: value });
  });
export type Method = z.infer<typeof method>;

interface Wrong {
  path: (string | number)[];
  allowed: string;
}

/** What each field alone cannot show. */
function wrongInMethod({ phases }: Pick<Method, 'phases'>): Wrong[] {
  const wrongs: Wrong[] = twice(phases, ['phases']);
  if (phases.every(({ onlyAfterMeet }) => onlyAfterMeet))
    wrongs.push({ path: ['phases'], allowed: 'it must hold one that is laid without a meet before it' });
  for (const [at, phase] of phases.entries()) {
    const here = ['phases', at];
    // A phase that is always as long has one wrong figure, not two.
    const isFixed = phase.leastWeeks === phase.mostWeeks;
    for (const field of isFixed ? (['leastWeeks'] as const) : (['leastWeeks', 'mostWeeks'] as const))
      if (phase[field] % phase.waveWeeks !== 0)
        wrongs.push({
          path: [...here, field],
          allowed: `it must be whole waves of ${phase.waveWeeks} weeks`,
        });
    if (phase.mostWeeks < phase.leastWeeks)
      wrongs.push({
        path: [...here, 'mostWeeks'],
        allowed: `it must be at least the fewest weeks of the phase, ${phase.leastWeeks}`,
      });
    const weekdays = phase.days.map(({ weekday }) => weekday);
    const again = weekdays.findIndex((weekday, day) => weekday <= (weekdays[day - 1] ?? 0));
    if (again >= 0)
      wrongs.push({
        path: [...here, 'days', again, 'weekday'],
        allowed: 'it must come after the day before it: one training day a weekday, Monday first',
      });
    for (const [day, { groups }] of phase.days.entries()) {
      wrongs.push(...twice(groups, [...here, 'days', day, 'groups']));
      for (const [group, asked] of groups.entries())
        wrongs.push(...wrongInGroup(asked, phase, [...here, 'days', day, 'groups', group]));
    }
  }
  return wrongs;
}

function wrongInGroup(
  { aim, blocks, lift: of, variants, restWeeks }: GroupAsked,
  { waveWeeks }: PhaseOfMethod,
  here: Wrong['path'],
): Wrong[] {
  const wrongs = twice(variants, [...here, 'variants']);
  if (restWeeks >= variants.length)
    wrongs.push({
      path: [...here, 'restWeeks'],
      allowed: `it must be fewer than its variants, ${variants.length}`,
    });
  const astray = of === 'squat' ? -1 : variants.findIndex((one) => one.start.way === 'ownBox');
  if (astray >= 0)
    wrongs.push({
      path: [...here, 'variants', astray, 'start', 'way'],
      allowed: 'it must be a start of that lift: each on their own box is for the squat alone',
    });
  const tooLong = (list: readonly unknown[], ...field: Wrong['path']) => {
    if (list.length > waveWeeks)
      wrongs.push({
        path: [...here, ...field],
        allowed: `it must have no more entries than the wave has weeks, ${waveWeeks}`,
      });
  };
  tooLong(blocks, 'blocks');
  switch (aim.by) {
    case 'percent':
      for (const [at, { shares }] of aim.targets.entries()) tooLong(shares, 'aim', 'targets', at, 'shares');
      break;
    case 'barAndBands': {
      tooLong(aim.barShares, 'aim', 'barShares');
      const unsorted = aim.levels.findIndex(
        ({ leastTimesBodyMass }, at) => leastTimesBodyMass <= (aim.levels[at - 1]?.leastTimesBodyMass ?? 0),
      );
      if (unsorted >= 0)
        wrongs.push({
          path: [...here, 'aim', 'levels', unsorted, 'leastTimesBodyMass'],
          allowed: 'it must be above the level before it',
        });
      break;
    }
    case 'capability':
      tooLong(aim.bottomShares, 'aim', 'bottomShares');
      tooLong(aim.lockoutShares, 'aim', 'lockoutShares');
      break;
    case 'speed':
      tooLong(aim.zones, 'aim', 'zones');
      for (const [at, { fromMps, toMps }] of aim.zones.entries())
        if (toMps <= fromMps)
          wrongs.push({
            path: [...here, 'aim', 'zones', at, 'toMps'],
            allowed: `it must be above the speed that the zone begins at, ${fromMps}`,
          });
  }
  return wrongs;
}

function twice(list: readonly { id: string }[], here: Wrong['path']): Wrong[] {
  return list.flatMap(({ id: own }, at) =>
    list.findIndex((other) => other.id === own) < at
      ? [{ path: [...here, at, 'id'], allowed: `it must differ from the others of this list` }]
      : [],
  );
}

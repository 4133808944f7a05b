import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';

type Seasons = Pick<ClubRecords, 'method' | 'meet' | 'season' | 'seasonEntry' | 'absence' | 'plannedByHand'>;

/** Who trains for which meets. The early crew lifts raw; of the late crew those who lift equipped have a season of their own. */
const ENTRIES = {
  early: {
    ilse: ['tollbridge'],
    tereza: ['tollbridge'],
    odhran: ['tollbridge', 'lowerWeir'],
    emre: ['tollbridge'],
    kwabena: ['tollbridge', 'lowerWeir'],
    lars: ['lowerWeir'],
    bastien: ['tollbridge'],
    // Back from her knee: a meet later than the others.
    maribel: ['lowerWeir'],
  },
  late: {
    saoirse: ['tollbridge'],
    dragan: ['lowerWeir'],
    tevita: ['lowerWeir'],
  },
} as const;

/** The class that each means to be in, by the limits of 2024 as member federations of the IPF publish them (the year from memory); who is not named is in the heaviest. */
const CLASS_LIMIT_KG: Readonly<Record<string, number>> = {
  ilse: 52,
  tereza: 63,
  odhran: 66,
  emre: 83,
  kwabena: 93,
  lars: 105,
  bastien: 120,
  saoirse: 76,
  // Above it by the scales, so that the demo has the caution.
  dragan: 105,
};

/** The Monday six weeks before that of `today`, on which both seasons began. */
export function startOfSeasons(today: string): string {
  return dateOfDay(dayNumber(mondayOf(today)) - 7 * WEEKS_DONE);
}

const WEEKS_DONE = 6;

/**
 * The club's season under way: six weeks of it are done, one meet is nine weeks ahead and one sixteen, both on a Saturday. Weeks count from that of
 * `today`. Everything is invented, the meets too.
 */
export function millraceSeasons(today: string): Seasons {
  const on = (weeks: number, weekday: number) =>
    dateOfDay(dayNumber(mondayOf(today)) + 7 * weeks + weekday - 1);
  return {
    method: shippedMethods
      .filter(({ id }) => id === 'raw-with-bands' || id === 'equipped-with-bands')
      .map((methodDocument) => ({ id: `method-${methodDocument.id}`, methodDocument })),
    meet: [
      {
        id: 'meet-tollbridge',
        title: 'Tollbridge Open',
        date: on(9, SATURDAY),
        note: 'Weigh-in from eight.',
      },
      { id: 'meet-lower-weir', title: 'Lower Weir Cup', date: on(16, SATURDAY), note: '' },
    ],
    season: [
      {
        id: 'season-early',
        title: 'Early crew',
        methodId: 'method-raw-with-bands',
        fromOn: startOfSeasons(today),
        note: '',
      },
      {
        id: 'season-late',
        title: 'Late crew, equipped',
        methodId: 'method-equipped-with-bands',
        fromOn: startOfSeasons(today),
        note: 'Suits from the second wave on.',
      },
    ],
    seasonEntry: Object.entries(ENTRIES).flatMap(([season, lifters]) =>
      Object.entries(lifters).map(([lifter, meets]) => ({
        id: `entry-${season}-${lifter}`,
        seasonId: `season-${season}`,
        lifterId: `lifter-${lifter}`,
        meetIds: meets.map((meet) => MEET_IDS[meet]),
        classes: meets.map((meet) => ({ meetId: MEET_IDS[meet], upToKg: CLASS_LIMIT_KG[lifter] ?? null })),
      })),
    ),
    absence: [
      {
        id: 'absence-floor',
        lifterId: null,
        fromOn: on(4, MONDAY),
        untilOn: on(4, SATURDAY),
        why: 'the floor is sanded',
      },
      {
        id: 'absence-emre',
        lifterId: 'lifter-emre',
        fromOn: on(2, THURSDAY),
        untilOn: on(3, 3),
        why: 'away for work',
      },
    ],
    plannedByHand: byHand(on),
  };
}

const MONDAY = 1;
const THURSDAY = 4;
const SATURDAY = 6;
const MEET_IDS = { tollbridge: 'meet-tollbridge', lowerWeir: 'meet-lower-weir' } as const;

/** Next week the racks are short, so the speed squats of the early crew have fewer sets; Bastien goes without them the week after. */
function byHand(on: (weeks: number, weekday: number) => string): RecordOf<'plannedByHand'>[] {
  return [
    {
      id: 'by-hand-short-of-racks',
      seasonId: 'season-early',
      lifterId: null,
      date: on(1, THURSDAY),
      askedId: 'speed-squat',
      instead: {
        start: null,
        aim: null,
        blocks: [
          { sets: 2, reps: 2, restSeconds: 90, shareOfAim: 0.7 },
          { sets: 6, reps: 2, restSeconds: 60, shareOfAim: 1 },
        ],
      },
      note: 'One rack is lent out.',
    },
    {
      id: 'by-hand-bastien-back',
      seasonId: 'season-early',
      lifterId: 'lifter-bastien',
      date: on(2, THURSDAY),
      askedId: 'speed-squat',
      instead: null,
      note: 'Moves house at the weekend.',
    },
  ];
}

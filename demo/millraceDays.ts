import { freshPlace } from '#contract/day/freshPlace.ts';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import { dayFrom } from './dayFrom.ts';

type Day = RecordOf<'day'>;

/** Lifter, rack, and the height of the lifter's own box (m); null: the group's start. */
type Row = readonly [string, 'north' | 'south', number | null];

const TOMORROW: readonly Row[] = [
  ['tereza', 'south', 0.36],
  ['ilse', 'south', 0.33],
  ['maribel', 'south', 0.36],
  ['odhran', 'south', 0.36],
  ['emre', 'north', 0.36],
  ['kwabena', 'north', 0.36],
  ['lars', 'north', 0.385],
  ['bastien', 'north', 0.41],
];

const LOW_BOX: readonly Row[] = [
  ['ilse', 'south', 0.33],
  ['tereza', 'south', 0.33],
  ['saoirse', 'south', 0.36],
  ['odhran', 'south', 0.33],
  ['kwabena', 'north', 0.36],
  ['lars', 'north', 0.385],
  ['tevita', 'north', 0.36],
];

const BENCHERS: readonly Row[] = [
  ['hana', 'south', null],
  ['nomvula', 'south', null],
  ['saoirse', 'south', null],
  ['ruben', 'south', null],
  ['emre', 'north', null],
  ['dragan', 'north', null],
  ['kwabena', 'north', null],
];

/** A work-up in steps to a heavy single: reps and share of the last step's load. */
const WORK_UP = [
  [3, 0.5],
  [3, 0.65],
  [2, 0.77],
  [1, 0.87],
  [1, 0.94],
  [1, 1],
] as const;

/** A training week of the Millrace Barbell Club around `today`. The club and its people are invented. */
export function millraceDays(today: string): Day[] {
  return [repeatedBench(dayFrom(today, -6)), speedSquat(dayFrom(today, 1)), lowBoxSingle(dayFrom(today, 4))];
}

function speedSquat(date: string): Day {
  return {
    id: 'day-speed-squat',
    date,
    title: 'Speed squat, third wave',
    groups: [
      {
        id: 'speed-squat',
        title: 'Speed squat off a box',
        work: 'speed',
        lift: 'squat',
        start: box(0.36),
        aim: {
          by: 'percent',
          targets: [
            { basis: 'bar', share: 0.5 },
            { basis: 'lockout', share: 0.75 },
          ],
        },
        blocks: [
          { sets: 2, reps: 2, restSeconds: 90, shareOfAim: 0.7 },
          { sets: 8, reps: 2, restSeconds: 60, shareOfAim: 1 },
        ],
        leastChance: null,
        bounds: null,
        away: [],
        places: places(TOMORROW),
      },
    ],
    oneSetPull: 0.5,
    note: 'Two racks, four lifters each, a set a minute. Bands are checked before the first rep.',
  };
}

function lowBoxSingle(date: string): Day {
  return {
    id: 'day-low-box',
    date,
    title: 'Heavy single, low box and bands',
    groups: [
      {
        id: 'low-box-single',
        title: 'Work up on a low box',
        work: 'maximal',
        lift: 'squat',
        start: box(0.36),
        aim: {
          by: 'percent',
          targets: [
            { basis: 'bar', share: 0.58 },
            { basis: 'lockout', share: 0.83 },
          ],
        },
        blocks: WORK_UP.map(([reps, shareOfAim]) => ({
          sets: 1,
          reps,
          restSeconds: shareOfAim < 0.8 ? 150 : 240,
          shareOfAim,
        })),
        leastChance: null,
        bounds: null,
        away: [],
        places: places(LOW_BOX),
      },
    ],
    oneSetPull: 0.3,
    note: 'Safeties set, a spotter each side and one behind. Who is not sharp stops two steps short.',
  };
}

function repeatedBench(date: string): Day {
  return {
    id: 'day-repeated-bench',
    date,
    title: 'Bench for repetitions',
    groups: [
      {
        id: 'repeated-bench',
        title: 'Bench press, sets of eight',
        work: 'repeated',
        lift: 'bench',
        start: { way: 'free', heightM: null },
        aim: { by: 'percent', targets: [{ basis: 'bar', share: 0.66 }] },
        blocks: [
          { sets: 1, reps: 8, restSeconds: 120, shareOfAim: 0.7 },
          { sets: 4, reps: 8, restSeconds: 150, shareOfAim: 1 },
        ],
        leastChance: null,
        bounds: null,
        away: [],
        places: places(BENCHERS),
      },
    ],
    oneSetPull: 1,
    note: 'Straight weight. Hana with a spotter on every set.',
  };
}

function box(heightM: number): Start {
  return { way: 'box', heightM };
}

function places(rows: readonly Row[]): Place[] {
  return rows.map(([lifter, rack, boxM]) => ({
    ...freshPlace(`lifter-${lifter}`, `rack-${rack}`),
    start: boxM === null ? null : box(boxM),
  }));
}

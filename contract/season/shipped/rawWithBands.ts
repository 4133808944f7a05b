import {
  beside,
  besideBench,
  type DayGiven,
  deload,
  type GroupGiven,
  lightStraight,
  lightWeek,
  type MethodGiven,
  walk,
} from './parts.ts';
import { evenSets, toHeavySingle, workSets } from './steps.ts';
import {
  deficit,
  freeSquat,
  fromFloor,
  lowBox,
  offBlocks,
  oneBoard,
  parallelBox,
  pausedBench,
  pausedSquat,
  touchAndGo,
} from './variants.ts';

/** Raw lifters gain less from the top of the range, so bands are lighter and more work is straight. Common practice, no source. */
const speedSquat: GroupGiven = {
  id: 'speed-squat',
  title: 'Speed squat',
  work: 'speed',
  lift: 'squat',
  variants: [parallelBox],
  aim: { by: 'barAndBands', barShares: [0.5, 0.525, 0.55], bandShares: [0.2, 0.25, 0.3] },
  blocks: [workSets(8, 2, 60), workSets(8, 2, 60), workSets(7, 2, 60)],
};
const speedDeadlift: GroupGiven = {
  id: 'speed-deadlift',
  title: 'Speed deadlift',
  work: 'speed',
  lift: 'deadlift',
  variants: [fromFloor],
  aim: { by: 'barAndBands', barShares: [0.5, 0.525, 0.55], bandShares: [0.15, 0.2] },
  blocks: [evenSets(8, 2, 60), evenSets(8, 2, 60), evenSets(6, 2, 60)],
};
const speedBench: GroupGiven = {
  id: 'speed-bench',
  title: 'Speed bench press',
  work: 'speed',
  lift: 'bench',
  variants: [pausedBench],
  aim: { by: 'barAndBands', barShares: [0.5, 0.525, 0.55], bandShares: [0.15, 0.2, 0.25] },
  blocks: [workSets(8, 3, 60), workSets(8, 3, 60), workSets(7, 3, 60)],
};
const heavySquat: GroupGiven = {
  id: 'heavy-squat',
  title: 'Heavy single, squat',
  work: 'maximal',
  lift: 'squat',
  variants: [freeSquat, pausedSquat, lowBox, parallelBox],
  restWeeks: 3,
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.92] }] },
  blocks: [toHeavySingle],
};
const heavyBench: GroupGiven = {
  id: 'heavy-bench',
  title: 'Heavy single, bench press',
  work: 'maximal',
  lift: 'bench',
  variants: [pausedBench, touchAndGo, oneBoard],
  restWeeks: 2,
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.92] }] },
  blocks: [toHeavySingle],
};
const manyDeadlifts: GroupGiven = {
  id: 'many-deadlifts',
  title: 'Deadlift for repetitions',
  work: 'repeated',
  lift: 'deadlift',
  variants: [fromFloor, deficit, offBlocks],
  restWeeks: 2,
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.7, 0.75, 0.8] }] },
  blocks: [evenSets(4, 5, 180), evenSets(4, 4, 180), evenSets(4, 3, 180)],
};

const heavyLower: DayGiven = {
  weekday: 1,
  title: 'Heavy squat',
  groups: [heavySquat, manyDeadlifts],
  accessories: beside,
};
const heavyUpper: DayGiven = {
  weekday: 2,
  title: 'Heavy bench press',
  groups: [heavyBench],
  accessories: besideBench,
};
const speedUpper: DayGiven = {
  weekday: 6,
  title: 'Speed bench press',
  groups: [speedBench],
  accessories: besideBench,
};

export const rawWithBands: MethodGiven = {
  format: 'rackwright-method-1',
  id: 'raw-with-bands',
  title: 'Raw, with bands',
  version: 2,
  madeOn: '2026-12-01',
  forWhom:
    'Raw lifters with two years of training or more. Less band than in equipment, since a raw lifter must be strong at the bottom. Minors only with qualified supervision.',
  says: 'Speed work against light bands in waves of three weeks, straight heavy singles in variants, deadlifts for repetitions, then near the limit and a deload.',
  sources: [
    { of: 'Boxes at parallel and 3 cm below it; a board of 4 cm', source: 'common practice, no source' },
    { of: 'Volume by zone', source: 'A. S. Prilepin, 1970s, as printed after Laputin & Oleshko 1982' },
    {
      of: 'Volume cut by 41 to 60 % before the meet',
      source: 'Bosquet et al. 2007, Med Sci Sports Exerc 39:1358',
    },
    {
      of: 'Last heavy squat and deadlift 7 to 10 days before the meet',
      source: 'Travis et al. 2021, J Strength Cond Res 35(12S):S26',
    },
    { of: 'Band shares, sets and rests', source: 'common practice, no source' },
  ],
  zoneShift: 0,
  limits: { mostHeavyLiftsAWeek: 20, mostRise: 0.3, mostWeeksOnOneBandShare: 6 },
  phases: [
    lightWeek,
    {
      id: 'speed-waves',
      title: 'Speed waves',
      goal: 'Fast reps against a little band, a heavy single a week in another variant, and deadlifts for repetitions.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 9,
      isRound: true,
      keepsBefore: 4,
      days: [
        heavyLower,
        heavyUpper,
        {
          weekday: 4,
          title: 'Speed lower body',
          groups: [speedSquat, speedDeadlift],
          accessories: beside,
          sleds: [walk],
        },
        speedUpper,
      ],
    },
    {
      id: 'heavy-wave',
      title: 'Heavy wave',
      goal: 'The lifts of the platform, straight, five points a week heavier and with fewer reps.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 6,
      isRound: true,
      keepsBefore: 3,
      days: [
        {
          weekday: 1,
          title: 'Squat',
          groups: [
            {
              id: 'heavy-sets-squat',
              title: 'Squat, heavy sets',
              work: 'repeated',
              lift: 'squat',
              variants: [freeSquat],
              aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.75, 0.8, 0.85] }] },
              blocks: [workSets(5, 4, 180), workSets(5, 3, 180), workSets(5, 2, 180)],
            },
          ],
          accessories: beside,
        },
        heavyUpper,
        {
          weekday: 4,
          title: 'Speed squat and deadlift',
          groups: [speedSquat, manyDeadlifts],
          accessories: beside,
        },
        speedUpper,
      ],
    },
    {
      id: 'near-limit',
      title: 'Near the limit',
      goal: 'Singles and doubles close to what will be opened with, and nothing else that tires. Spotters, safety pins at height, and nobody who is hurt.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 3,
      keepsBefore: 2,
      days: [
        { weekday: 2, title: 'Heavy bench press', groups: [heavyBench], accessories: besideBench },
        {
          weekday: 4,
          title: 'Squat and deadlift near the limit',
          groups: [
            {
              id: 'near-limit-squat',
              title: 'Squat near the limit',
              work: 'maximal',
              lift: 'squat',
              variants: [freeSquat],
              aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.875, 0.9, 0.925] }] },
              blocks: [workSets(4, 2, 240), workSets(3, 1, 240), workSets(2, 1, 300)],
              leastChance: 0.75,
            },
            {
              id: 'near-limit-deadlift',
              title: 'Deadlift near the limit',
              work: 'maximal',
              lift: 'deadlift',
              variants: [fromFloor],
              aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.85, 0.875, 0.9] }] },
              blocks: [workSets(3, 2, 240), workSets(2, 1, 240), workSets(1, 1, 300)],
              leastChance: 0.75,
            },
          ],
        },
        speedUpper,
      ],
    },
    deload([
      {
        weekday: 1,
        title: 'Light and fast',
        groups: [
          lightStraight('deload-squat', 'Light squat', 'squat', 0.65, [workSets(4, 2, 90)]),
          lightStraight('deload-bench', 'Bench press, last heavy singles', 'bench', 0.86, [
            workSets(2, 1, 180),
          ]),
        ],
      },
      {
        weekday: 3,
        title: 'Bench press, light',
        groups: [lightStraight('light-bench', 'Light bench press', 'bench', 0.7, [workSets(4, 2, 90)])],
      },
    ]),
  ],
};

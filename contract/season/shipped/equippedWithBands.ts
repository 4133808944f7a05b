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
  highBox,
  lowBox,
  offBlocks,
  oneBoard,
  parallelBox,
  pausedBench,
  threeBoards,
  twoBoards,
} from './variants.ts';

const heavySquat: GroupGiven = {
  id: 'heavy-squat',
  title: 'Heavy single, squat',
  work: 'maximal',
  lift: 'squat',
  variants: [parallelBox, highBox, freeSquat, lowBox],
  restWeeks: 3,
  aim: { by: 'barAndBands', barShares: [0.6], bandShares: [0.3] },
  blocks: [toHeavySingle],
};

const heavyBench: GroupGiven = {
  id: 'heavy-bench',
  title: 'Heavy single, bench press',
  work: 'maximal',
  lift: 'bench',
  variants: [twoBoards, pausedBench, threeBoards, oneBoard],
  restWeeks: 3,
  aim: { by: 'barAndBands', barShares: [0.62], bandShares: [0.28] },
  blocks: [toHeavySingle],
};

const speedBench: GroupGiven = {
  id: 'speed-bench',
  title: 'Speed bench press',
  work: 'speed',
  lift: 'bench',
  variants: [pausedBench],
  aim: { by: 'barAndBands', barShares: [0.4, 0.425, 0.45], bandShares: [0.25, 0.3, 0.25, 0.3] },
  blocks: [workSets(9, 3, 60), workSets(9, 3, 60), workSets(8, 3, 60)],
};

/** 25 lifts in five sets after the squats of a speed day: common practice, no source. */
const speedDeadlift: GroupGiven = {
  id: 'speed-deadlift',
  title: 'Speed deadlift',
  work: 'speed',
  lift: 'deadlift',
  variants: [fromFloor],
  aim: { by: 'barAndBands', barShares: [0.4, 0.425, 0.45], bandShares: [0.25, 0.3, 0.25, 0.3] },
  blocks: [evenSets(5, 5, 90)],
};

const heavyLower: DayGiven = {
  weekday: 1,
  title: 'Heavy lower body',
  groups: [heavySquat],
  accessories: beside,
  sleds: [walk],
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

export const equippedWithBands: MethodGiven = {
  format: 'rackwright-method-1',
  id: 'equipped-with-bands',
  title: 'Equipped, with bands',
  version: 2,
  madeOn: '2026-12-01',
  forWhom:
    'Experienced lifters in supportive equipment, with at least two years of training, whose technique holds near the limit. Not for beginners, and not for minors without qualified supervision.',
  says: 'Speed work in waves of three weeks whose bands step up from wave to wave, heavy singles in variants that change each week, then much band and few reps, then near the limit, then rest.',
  sources: [
    {
      of: 'Boxes at parallel, 6 cm above it and 3 cm below it; boards of 4 cm',
      source: 'common practice, no source',
    },
    {
      of: 'Band steps of 25, 32, 37.5 and 44 % of the best squat; five sets of five at 80, 85 and 90 %; 25 deadlifts in five sets; 90 to 100 % at lockout before the meet',
      source: 'common practice, no source',
    },
    { of: 'Volume of speed work', source: 'A. S. Prilepin, 1970s, as printed after Laputin & Oleshko 1982' },
    {
      of: 'Volume cut by 41 to 60 % before the meet',
      source: 'Bosquet et al. 2007, Med Sci Sports Exerc 39:1358',
    },
    {
      of: 'Last heavy squat and deadlift 7 to 10 days before the meet',
      source: 'Travis et al. 2021, J Strength Cond Res 35(12S):S26',
    },
  ],
  zoneShift: 0.05,
  limits: { mostHeavyLiftsAWeek: 30, mostRise: 0.3, mostWeeksOnOneBandShare: 6 },
  phases: [
    lightWeek,
    {
      id: 'speed-waves',
      title: 'Speed waves',
      goal: 'Every rep as fast as it goes, against bands that grow from wave to wave; a heavy single in another variant each week keeps the top within reach.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 12,
      isRound: true,
      keepsBefore: 4,
      days: [
        heavyLower,
        heavyUpper,
        {
          weekday: 4,
          title: 'Speed lower body',
          groups: [
            {
              id: 'speed-squat',
              title: 'Speed squat',
              work: 'speed',
              lift: 'squat',
              variants: [parallelBox],
              aim: {
                by: 'barAndBands',
                barShares: [0.45, 0.475, 0.5],
                bandShares: [0.25, 0.32, 0.375, 0.44],
                levels: [{ leastTimesBodyMass: 3.5, bandShares: [0.32, 0.375, 0.44, 0.44] }],
              },
              blocks: [workSets(10, 2, 60), workSets(10, 2, 60), workSets(8, 2, 60)],
            },
            speedDeadlift,
          ],
          accessories: beside,
        },
        speedUpper,
      ],
    },
    {
      id: 'strength-speed',
      title: 'Much band, few reps',
      goal: 'Bars that move slowly though they are pushed hard: much band and five sets of five, five points a week more at lockout. No heavy squat beside it.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 3,
      isRound: true,
      keepsBefore: 3,
      days: [
        { weekday: 1, title: 'Deadlift', groups: [speedDeadlift], accessories: beside, sleds: [walk] },
        heavyUpper,
        {
          weekday: 4,
          title: 'Much band, squat',
          groups: [
            {
              id: 'speed-squat',
              title: 'Much band, squat',
              work: 'speed',
              lift: 'squat',
              variants: [parallelBox],
              aim: { by: 'barAndBands', barShares: [0.36, 0.41, 0.46], bandShares: [0.44] },
              blocks: [evenSets(5, 5, 180)],
            },
          ],
          accessories: beside,
        },
        speedUpper,
      ],
    },
    {
      id: 'circa-maximal',
      title: 'Near the limit',
      goal: 'Bar and bands at lockout go from 90 to 100 % of the best, in fewer and fewer lifts. Spotters, safety pins at height, and nobody who is hurt.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 3,
      keepsBefore: 2,
      days: [
        {
          weekday: 2,
          title: 'Heavy bench press',
          groups: [heavyBench],
          accessories: besideBench,
        },
        {
          weekday: 4,
          title: 'Near the limit, squat',
          groups: [
            {
              id: 'near-limit-squat',
              title: 'Near the limit, squat',
              work: 'speed',
              lift: 'squat',
              variants: [parallelBox],
              aim: { by: 'barAndBands', barShares: [0.5, 0.55, 0.6], bandShares: [0.4] },
              blocks: [workSets(5, 2, 180), workSets(4, 2, 180), workSets(3, 1, 240)],
              leastChance: 0.75,
            },
            {
              id: 'near-limit-deadlift',
              title: 'Deadlift, few and fast',
              work: 'speed',
              lift: 'deadlift',
              variants: [fromFloor, offBlocks, deficit],
              restWeeks: 2,
              aim: { by: 'barAndBands', barShares: [0.5, 0.55, 0.6], bandShares: [0.25] },
              blocks: [evenSets(6, 1, 90), evenSets(5, 1, 120), evenSets(3, 1, 150)],
            },
          ],
          accessories: beside,
        },
        speedUpper,
      ],
    },
    deload([
      {
        weekday: 2,
        title: 'Light and fast',
        groups: [
          lightStraight('deload-squat', 'Light squat', 'squat', 0.6, [workSets(4, 2, 90)]),
          lightStraight('deload-bench', 'Light bench press', 'bench', 0.65, [workSets(5, 2, 90)]),
          lightStraight('deload-deadlift', 'Light deadlift', 'deadlift', 0.5, [evenSets(3, 1, 90)]),
        ],
      },
    ]),
  ],
};

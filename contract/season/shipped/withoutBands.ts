import {
  beside,
  besideBench,
  deload,
  type GroupGiven,
  lightWeek,
  type MethodGiven,
  straight,
} from './parts.ts';
import { evenSets, workSets } from './steps.ts';
import { deficit, fromFloor, oneBoard, pausedBench, pausedSquat } from './variants.ts';

/** Second days: a variant of the lift, lighter, by bar speed where somebody measures it. */
const fastSquat: GroupGiven = {
  id: 'fast-squat',
  title: 'Squat, fast',
  work: 'speed',
  lift: 'squat',
  variants: [pausedSquat],
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.6, 0.625, 0.65] }] },
  blocks: [workSets(6, 2, 90)],
};
const fastBench: GroupGiven = {
  id: 'fast-bench',
  title: 'Bench press, fast',
  work: 'speed',
  lift: 'bench',
  variants: [pausedBench, oneBoard],
  restWeeks: 1,
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.6, 0.625, 0.65] }] },
  blocks: [workSets(7, 3, 90)],
};

export const withoutBands: MethodGiven = {
  format: 'rackwright-method-1',
  id: 'without-bands',
  title: 'Without bands',
  version: 2,
  madeOn: '2026-12-01',
  forWhom:
    'Lifters who train with straight weight alone, of every level but the first months. Minors only with qualified supervision.',
  says: 'Waves of three weeks that grow heavier and shorter, a fast day beside each heavy one, then near the limit and a deload.',
  sources: [
    { of: 'Volume by zone', source: 'A. S. Prilepin, 1970s, as printed after Laputin & Oleshko 1982' },
    {
      of: 'Volume cut by 41 to 60 % before the meet',
      source: 'Bosquet et al. 2007, Med Sci Sports Exerc 39:1358',
    },
    {
      of: 'Last heavy squat and deadlift 7 to 10 days before the meet',
      source: 'Travis et al. 2021, J Strength Cond Res 35(12S):S26',
    },
    { of: 'Sets, reps and rests', source: 'common practice, no source' },
  ],
  zoneShift: 0,
  limits: { mostHeavyLiftsAWeek: 20, mostRise: 0.3, mostWeeksOnOneBandShare: null },
  phases: [
    lightWeek,
    {
      id: 'volume',
      title: 'Many lifts',
      goal: 'Practice and muscle: many lifts at a weight that stays crisp.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 6,
      isRound: true,
      keepsBefore: 4,
      days: [
        {
          weekday: 1,
          title: 'Squat',
          groups: [
            straight(
              'squat',
              'Squat',
              'squat',
              [0.7, 0.725, 0.75],
              [workSets(4, 5, 150), workSets(4, 5, 150), workSets(4, 5, 180)],
            ),
          ],
          accessories: beside,
        },
        {
          weekday: 2,
          title: 'Bench press',
          groups: [
            straight(
              'bench',
              'Bench press',
              'bench',
              [0.7, 0.725, 0.75],
              [workSets(4, 6, 150), workSets(4, 5, 150), workSets(4, 5, 150)],
            ),
          ],
          accessories: besideBench,
        },
        {
          weekday: 4,
          title: 'Deadlift',
          groups: [
            straight(
              'deadlift',
              'Deadlift',
              'deadlift',
              [0.7, 0.725, 0.75],
              [workSets(4, 4, 180), workSets(4, 4, 180), workSets(4, 3, 180)],
            ),
            fastSquat,
          ],
          accessories: beside,
        },
        { weekday: 6, title: 'Bench press, fast', groups: [fastBench], accessories: besideBench },
      ],
    },
    {
      id: 'strength',
      title: 'Heavier, fewer',
      goal: 'The same lifts heavier, in fewer reps, five points a week.',
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
            straight(
              'squat',
              'Squat',
              'squat',
              [0.75, 0.8, 0.85],
              [workSets(5, 4, 180), workSets(5, 3, 180), workSets(5, 2, 240)],
            ),
          ],
          accessories: beside,
        },
        {
          weekday: 2,
          title: 'Bench press',
          groups: [
            straight(
              'bench',
              'Bench press',
              'bench',
              [0.75, 0.8, 0.85],
              [workSets(5, 4, 180), workSets(5, 3, 180), workSets(5, 2, 180)],
            ),
          ],
          accessories: besideBench,
        },
        {
          weekday: 4,
          title: 'Deadlift',
          groups: [
            {
              id: 'deadlift-variant',
              title: 'Deadlift, heavier',
              work: 'repeated',
              lift: 'deadlift',
              variants: [fromFloor, deficit],
              restWeeks: 1,
              aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.75, 0.8, 0.85] }] },
              blocks: [workSets(4, 3, 180), workSets(4, 3, 180), workSets(4, 2, 240)],
            },
            fastSquat,
          ],
          accessories: beside,
        },
        { weekday: 6, title: 'Bench press, fast', groups: [fastBench], accessories: besideBench },
      ],
    },
    {
      id: 'near-limit',
      title: 'Near the limit',
      goal: 'Singles and doubles close to what will be opened with. Spotters, safety pins at height, and nobody who is hurt.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 3,
      keepsBefore: 2,
      days: [
        {
          weekday: 2,
          title: 'Bench press',
          groups: [
            straight(
              'bench',
              'Bench press',
              'bench',
              [0.875, 0.9, 0.9],
              [workSets(4, 2, 240), workSets(3, 1, 240), workSets(3, 1, 240)],
            ),
          ],
          accessories: besideBench,
        },
        {
          weekday: 4,
          title: 'Squat and deadlift near the limit',
          groups: [
            straight(
              'squat',
              'Squat',
              'squat',
              [0.875, 0.9, 0.925],
              [workSets(4, 2, 240), workSets(3, 1, 240), workSets(2, 1, 300)],
            ),
            straight(
              'deadlift',
              'Deadlift',
              'deadlift',
              [0.85, 0.875, 0.9],
              [workSets(3, 2, 240), workSets(2, 1, 240), workSets(1, 1, 300)],
            ),
          ],
        },
        { weekday: 6, title: 'Bench press, fast', groups: [fastBench], accessories: besideBench },
      ],
    },
    deload([
      {
        weekday: 1,
        title: 'Light squat, last heavy bench press',
        groups: [
          straight('squat', 'Squat', 'squat', [0.65], [workSets(4, 2, 90)]),
          straight('bench', 'Bench press', 'bench', [0.86], [workSets(2, 1, 180)]),
        ],
      },
      {
        weekday: 3,
        title: 'Bench press, light',
        groups: [straight('light-bench', 'Bench press, light', 'bench', [0.7], [evenSets(4, 2, 90)])],
      },
    ]),
  ],
};

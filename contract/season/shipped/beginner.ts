import { beside, besideBench, type GroupGiven, lightWeek, type MethodGiven, straight } from './parts.ts';
import { evenSets, workSets } from './steps.ts';

/** Whoever learns a lift makes every rep. */
const lifted = (
  lift: GroupGiven['lift'],
  title: string,
  shares: number[],
  blocks: GroupGiven['blocks'],
): GroupGiven => ({ ...straight(lift, title, lift, shares, blocks), leastChance: 0.9 });

export const beginner: MethodGiven = {
  format: 'rackwright-method-1',
  id: 'beginner',
  title: 'First year',
  version: 1,
  madeOn: '2026-11-30',
  forWhom:
    'Lifters in their first year, three days a week, without bands and without heavy singles. Minors only with qualified supervision and the consent of their parents; local rules come first.',
  says: 'Three lifts, three days, sets of five and then of three, a little more each week while every rep is made; a first meet with something to spare.',
  sources: [
    { of: 'Volume by zone', source: 'A. S. Prilepin, 1970s, as printed after Laputin & Oleshko 1982' },
    { of: 'Volume cut before the meet', source: 'Pritchard et al. 2015, Strength Cond J 37:72, from memory' },
    { of: 'Sets, reps and rests', source: 'common practice, no source' },
  ],
  zoneShift: 0,
  limits: { mostHeavyLiftsAWeek: 0, mostRise: 0.3, mostWeeksOnOneBandShare: null },
  phases: [
    lightWeek,
    {
      id: 'fives',
      title: 'Fives',
      goal: 'Learn the lifts: sets of five that are all made, two and a half points a week more.',
      waveWeeks: 4,
      leastWeeks: 4,
      mostWeeks: 12,
      isRound: true,
      keepsBefore: 3,
      days: [
        {
          weekday: 1,
          title: 'Squat and bench press',
          groups: [
            lifted('squat', 'Squat', [0.65, 0.675, 0.7, 0.725], [workSets(4, 5, 150)]),
            lifted('bench', 'Bench press', [0.65, 0.675, 0.7, 0.725], [workSets(4, 5, 150)]),
          ],
          accessories: beside,
        },
        {
          weekday: 3,
          title: 'Deadlift',
          groups: [lifted('deadlift', 'Deadlift', [0.65, 0.675, 0.7, 0.725], [workSets(3, 5, 180)])],
          accessories: besideBench,
        },
        {
          weekday: 5,
          title: 'Squat and bench press, lighter',
          groups: [
            lifted('squat', 'Squat', [0.55, 0.575, 0.6, 0.625], [evenSets(3, 5, 120)]),
            lifted('bench', 'Bench press', [0.55, 0.575, 0.6, 0.625], [evenSets(4, 5, 120)]),
          ],
          accessories: beside,
        },
      ],
    },
    {
      id: 'threes',
      title: 'Threes',
      goal: 'Heavier sets of three, so that the platform feels known; still every rep made.',
      waveWeeks: 3,
      leastWeeks: 3,
      mostWeeks: 3,
      keepsBefore: 2,
      days: [
        {
          weekday: 1,
          title: 'Squat and bench press',
          groups: [
            lifted(
              'squat',
              'Squat',
              [0.75, 0.8, 0.85],
              [workSets(4, 3, 180), workSets(4, 3, 180), workSets(3, 2, 180)],
            ),
            lifted(
              'bench',
              'Bench press',
              [0.75, 0.8, 0.85],
              [workSets(4, 3, 180), workSets(4, 3, 180), workSets(3, 2, 180)],
            ),
          ],
          accessories: beside,
        },
        {
          weekday: 3,
          title: 'Deadlift',
          groups: [
            lifted(
              'deadlift',
              'Deadlift',
              [0.75, 0.8, 0.85],
              [workSets(3, 3, 180), workSets(3, 3, 180), workSets(2, 2, 180)],
            ),
          ],
          accessories: besideBench,
        },
        {
          weekday: 5,
          title: 'Squat and bench press, lighter',
          groups: [
            lifted('squat', 'Squat', [0.65], [evenSets(3, 3, 120)]),
            lifted('bench', 'Bench press', [0.65], [evenSets(4, 3, 120)]),
          ],
        },
      ],
    },
    {
      id: 'deload',
      title: 'Before the meet',
      goal: 'Little and light; the commands of the platform are practised with an easy bar.',
      waveWeeks: 1,
      leastWeeks: 1,
      mostWeeks: 1,
      keepsBefore: 0,
      days: [
        {
          weekday: 1,
          title: 'All three, light',
          groups: [
            lifted('squat', 'Squat with commands', [0.6], [evenSets(4, 2, 120)]),
            lifted('bench', 'Bench press with commands', [0.65], [evenSets(4, 2, 120)]),
            lifted('deadlift', 'Deadlift with commands', [0.55], [evenSets(3, 1, 120)]),
          ],
        },
        {
          weekday: 3,
          title: 'Bench press, light',
          groups: [lifted('bench', 'Bench press', [0.6], [evenSets(3, 3, 120)])],
        },
      ],
    },
  ],
};

import type { z } from 'zod';
import type { method } from '#contract/records/method.ts';
import { evenSets } from './steps.ts';
import { freeSquat, fromFloor, pausedBench } from './variants.ts';

/** A method as one writes it, before what is left out gets its default. */
export type MethodGiven = z.input<typeof method>;
export type PhaseGiven = MethodGiven['phases'][number];
export type DayGiven = PhaseGiven['days'][number];
export type GroupGiven = DayGiven['groups'][number];

/** What the shipped methods share. Common practice, no source. */
export const beside = [
  { title: 'Back of the leg', sets: 4, reps: 10 },
  { title: 'Trunk', sets: 4, reps: 12 },
];
export const besideBench = [
  { title: 'Back of the upper arm', sets: 5, reps: 10 },
  { title: 'Upper back', sets: 5, reps: 10 },
];
export const walk = { title: 'Sled, walked', trips: 6, distanceM: 50, massKg: 60, friction: 0.4 };

export const lightWeek: PhaseGiven = {
  id: 'after-meet',
  title: 'After the meet',
  goal: 'Joints and will come back: light, no bands, no heavy single.',
  waveWeeks: 1,
  leastWeeks: 1,
  mostWeeks: 1,
  keepsBefore: 1,
  onlyAfterMeet: true,
  days: [
    {
      weekday: 2,
      title: 'Light squat',
      groups: [
        {
          id: 'light-squat',
          title: 'Light squat',
          work: 'repeated',
          lift: 'squat',
          variants: [freeSquat],
          aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.5] }] },
          blocks: [evenSets(3, 5, 120)],
        },
      ],
      accessories: beside,
    },
    { weekday: 5, title: 'Light upper body', groups: [], accessories: besideBench },
  ],
};

/** A lift as on the platform, with straight weight, at shares by week of the wave. */
export function straight(
  id: string,
  title: string,
  lift: GroupGiven['lift'],
  shares: number[],
  blocks: GroupGiven['blocks'],
): GroupGiven {
  return {
    id,
    title,
    work: 'repeated',
    lift,
    variants: [{ squat: freeSquat, bench: pausedBench, deadlift: fromFloor }[lift]],
    aim: { by: 'percent', targets: [{ basis: 'bar', shares }] },
    blocks,
  };
}

/** The same light and fast, in one week. */
export function lightStraight(
  id: string,
  title: string,
  lift: GroupGiven['lift'],
  share: number,
  blocks: GroupGiven['blocks'],
): GroupGiven {
  return { ...straight(id, title, lift, [share], blocks), work: 'speed' };
}

/** The last week before the meet. */
export function deload(days: DayGiven[]): PhaseGiven {
  return {
    id: 'deload',
    title: 'Deload',
    goal: 'Little, light and fast, so that what was built comes through on the platform.',
    waveWeeks: 1,
    leastWeeks: 1,
    mostWeeks: 1,
    keepsBefore: 0,
    days,
  };
}

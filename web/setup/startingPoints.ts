import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Aim, Block, Group } from '#contract/records/day.ts';
import type { Lift, Start } from '#contract/records/lift.ts';

type Work = Group['work'];

/** The three kinds of work a group can do, as the coach picks them. */
export const workWords = [
  { value: 'speed', word: 'speed', says: 'Several short sets, every rep as fast as it goes.' },
  { value: 'maximal', word: 'maximal effort', says: 'Up in steps to a heavy single in a variant.' },
  { value: 'repeated', word: 'repeated effort', says: 'A few sets of many reps with straight weight.' },
] as const satisfies readonly { value: Work; word: string; says: string }[];

/** Common practice, no source: sets, reps, seconds of rest and share of the aim. */
const blocksOf: Record<Work, readonly (readonly [number, number, number, number])[]> = {
  speed: [
    [2, 2, 90, 0.7],
    [8, 2, 60, 1],
  ],
  maximal: [
    [1, 3, 150, 0.5],
    [1, 3, 150, 0.65],
    [1, 2, 150, 0.77],
    [1, 1, 240, 0.87],
    [1, 1, 240, 0.94],
    [1, 1, 240, 1],
  ],
  repeated: [
    [1, 8, 120, 0.7],
    [4, 8, 150, 1],
  ],
};

/** Common practice, no source: shares of the reference maximum. */
const aimsOf: Record<Work, Aim> = {
  speed: {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.5 },
      { basis: 'lockout', share: 0.75 },
    ],
  },
  maximal: {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.62 },
      { basis: 'lockout', share: 0.87 },
    ],
  },
  repeated: { by: 'percent', targets: [{ basis: 'bar', share: 0.66 }] },
};

const titles: Record<Work, string> = {
  speed: 'Speed',
  maximal: 'Work up to a heavy single',
  repeated: 'For repetitions',
};

/** A parallel box for a lifter of middling height. Assumption. */
export const usualBoxM = 0.36;

/** A group as a coach would begin it: the kind of work sets sets, reps, rest and aim; nobody is in it yet. */
export function startingGroup(id: string, work: Work, lift: Lift, boxHeightM: number | null): Group {
  return {
    id,
    title: `${titles[work]}, ${lift}`,
    work,
    lift,
    start: startOf(work, lift, boxHeightM),
    aim: aimsOf[work],
    blocks: blocksOf[work].map(
      ([sets, reps, restSeconds, shareOfAim]): Block => ({ sets, reps, restSeconds, shareOfAim }),
    ),
    leastChance: null,
    bounds: null,
    away: [],
    places: [],
  };
}

/** A group that does what the club keeps, before anybody is in it. */
export function groupFromWork(id: string, kept: RecordOf<'workTemplate'>): Group {
  const { label: title, work, lift, start, aim, blocks, leastChance, bounds } = kept;
  return { id, title, work, lift, start, aim, blocks, leastChance, bounds, places: [], away: [] };
}

function startOf(work: Work, lift: Lift, boxHeightM: number | null): Start {
  if (work === 'repeated' || lift === 'deadlift') return { way: 'free', heightM: null };
  if (lift === 'bench') return { way: 'paused', heightM: null };
  return boxHeightM === null ? { way: 'free', heightM: null } : { way: 'box', heightM: boxHeightM };
}

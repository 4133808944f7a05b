import type { Lift, Start } from '#contract/records/lift.ts';

export interface NamedLift {
  lift: Lift;
  /** What the name says of the start; null: nothing. */
  way: Start['way'] | null;
}

/** The lift that a name in a training diary means: `Box squat`, `paused bench press`, `Deadlift from blocks`. Null: none of ours. */
export function namedLift(name: string): NamedLift | null {
  const words = name.toLowerCase().match(/[a-z]+/g) ?? [];
  const lifts = new Set(words.flatMap((word) => liftOf[word] ?? []));
  const ways = new Set(words.flatMap((word) => wayOf[word] ?? []));
  const understood = words.every((word) => word in liftOf || word in wayOf || besides.has(word));
  const [lift] = lifts;
  const [way = null] = ways;
  if (lift === undefined || lifts.size > 1 || ways.size > 1 || !understood) return null;
  return { lift, way };
}

const liftOf: Record<string, Lift> = {
  squat: 'squat',
  squats: 'squat',
  bench: 'bench',
  benches: 'bench',
  press: 'bench',
  presses: 'bench',
  deadlift: 'deadlift',
  deadlifts: 'deadlift',
};

const wayOf: Record<string, Start['way']> = {
  box: 'box',
  pin: 'pins',
  pins: 'pins',
  board: 'boards',
  boards: 'boards',
  block: 'blocks',
  blocks: 'blocks',
  deficit: 'deficit',
  pause: 'paused',
  paused: 'paused',
};

/** Words that leave the lift what it is. */
const besides = new Set(
  'the a an from off on to and free straight back competition comp full speed max maximal'.split(' '),
);

import type { Lift, Start } from '#contract/records/lift.ts';

export const liftWords = [
  { value: 'squat', word: 'squat' },
  { value: 'bench', word: 'bench press' },
  { value: 'deadlift', word: 'deadlift' },
] as const satisfies readonly { value: Lift; word: string }[];

type Way = Start['way'];

/** The ways to begin a lift, the plainest first. */
export const waysOf: Record<Lift, readonly Way[]> = {
  squat: ['free', 'box', 'pins'],
  bench: ['free', 'paused', 'boards', 'pins'],
  deadlift: ['free', 'blocks', 'deficit', 'pins'],
};

/** Ways that carry a height, and what is measured. */
export const heightOf: Partial<Record<Way, string>> = {
  box: 'Box height',
  pins: 'Bar height on the pins',
  boards: 'Thickness of the boards',
  blocks: 'Height of the blocks',
  deficit: 'Height of the platform',
};

/** How a start is named for this lift: "free" is a different thing on the bench than from the floor. */
export function wayWord(lift: Lift, way: Way): string {
  if (way === 'free') return { squat: 'free', bench: 'touch and go', deadlift: 'from the floor' }[lift];
  return {
    paused: 'paused',
    box: 'to a box',
    pins: 'from pins',
    boards: 'to boards',
    blocks: 'from blocks',
    deficit: 'standing on a platform',
  }[way];
}

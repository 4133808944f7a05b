import type { Block } from '#contract/records/day.ts';

/** Two easy sets and then the work itself: sets, reps and seconds of rest. Common practice, no source. */
export function workSets(sets: number, reps: number, restSeconds: number): Block[] {
  return [
    { sets: 2, reps: Math.min(reps, 3), restSeconds: 90, shareOfAim: 0.7 },
    { sets, reps, restSeconds, shareOfAim: 1 },
  ];
}

/** Up in steps to one heavy single. Common practice, no source. */
export const toHeavySingle: Block[] = [
  { sets: 1, reps: 3, restSeconds: 150, shareOfAim: 0.5 },
  { sets: 1, reps: 3, restSeconds: 150, shareOfAim: 0.65 },
  { sets: 1, reps: 2, restSeconds: 180, shareOfAim: 0.77 },
  { sets: 1, reps: 1, restSeconds: 240, shareOfAim: 0.87 },
  { sets: 1, reps: 1, restSeconds: 240, shareOfAim: 0.94 },
  { sets: 1, reps: 1, restSeconds: 300, shareOfAim: 1 },
];

/** Sets that are all alike, without steps up to them. */
export function evenSets(sets: number, reps: number, restSeconds: number): Block[] {
  return [{ sets, reps, restSeconds, shareOfAim: 1 }];
}

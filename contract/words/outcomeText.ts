import type { Lift, SetupFamily } from '#contract/records/lift.ts';
import type { Outcome } from '#contract/records/outcome.ts';
import { liftWord } from './liftWords.ts';
import { variantText } from './variantText.ts';

/** What a comparison can look at, in the order of a choice. */
export const outcomeWords = [
  { value: 'strength', word: 'estimated strength' },
  { value: 'setup', word: 'a gym setup' },
  { value: 'platform', word: 'lifts at meets' },
] as const satisfies readonly { value: Outcome; word: string }[];

/** "squat, by estimated strength"; "box squat with bands". */
export function outcomeText(outcome: Outcome, lift: Lift, family: SetupFamily | null): string {
  if (family !== null) return variantText({ lift, ...family });
  return outcome === 'platform' ? `${liftWord(lift)} at meets` : `${liftWord(lift)}, by estimated strength`;
}

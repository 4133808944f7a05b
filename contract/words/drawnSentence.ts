import type { Comparison } from '#contract/records/comparison.ts';
import { dateText } from './dateText.ts';

/** When and by which seed lots were drawn, and what the seed is good for. */
export function drawnSentence({ drawnOn, planDocument: { seed } }: Comparison): string {
  return `Drawn on ${dateText(drawnOn)} by seed ${seed}: drawing these lifters again with it gives the same result.`;
}

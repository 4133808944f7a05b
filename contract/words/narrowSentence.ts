import type { Belief } from '#contract/strength/strengthEstimate.ts';

/** A range wider than this from end to end, as a share of the middle, is wide (judgement). */
const WIDE_SHARE = 0.15;

/** What to log so that a wide range of the maximum becomes narrower; null where it is narrow enough. */
export function narrowSentence({ low80, median, high80 }: Belief): string | null {
  if (high80 - low80 <= WIDE_SHARE * median) return null;
  return 'The range is wide because the log says no more. One heavy single, one measured bar speed, or the number of reps left after one hard set would narrow it.';
}

import { noDiscs } from '#contract/paper/lifterLine.ts';

/** "2 × 25 + 10" as it breaks on paper: before a plus only. */
export function discsOnPaper(aSide: string): string {
  return aSide.replaceAll(' × ', '\u00a0×\u00a0').replaceAll('+ ', '+\u00a0');
}

/** What follows the discs of a step. */
export function stepSide(aSide: string): string {
  return aSide === noDiscs ? '' : ' a side';
}

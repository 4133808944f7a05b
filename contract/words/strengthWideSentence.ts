import { normalQuantile } from '#core/numeric/normal.ts';
import { percent } from './percent.ts';

/** How badly a lifter's strength is known, what was taken off for it, and the set that would tell more. */
export function strengthWideSentence(told: {
  sdLn: number;
  chance: number;
  belowShare: number;
  workUp: boolean;
}): string {
  const spread = percent(Math.exp(normalQuantile(0.9) * told.sdLn) - 1);
  const lowered =
    told.belowShare < 0.005
      ? ''
      : `, so the proposal goes by ${percent(told.belowShare)} less than the middle of that range, strength that is there ${percent(told.chance)} of the time`;
  const set = told.workUp ? 'the last work-up set' : 'the first set';
  return `Strength is known only to within ${spread}, four times in five${lowered}. Note the bar speed of ${set}, or the reps left after it, to know it better.`;
}

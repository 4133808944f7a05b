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
      : `: the proposal goes by ${percent(told.belowShare)} less than its middle, which is there with a chance of ${percent(told.chance)}`;
  const set = told.workUp ? 'the last work-up set' : 'the first set';
  return `Strength is known to within ${spread} only, four times in five${lowered}; note the speed or the reps left of ${set} to know it better.`;
}

import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';

/** What changes in an estimate when the newest sets are taken in alone. */
export type TakenIn = Pick<
  StrengthEstimate,
  'on' | 'setCount' | 'takenIn' | 'lastSetOn' | 'maxKg' | 'inEquipment' | 'parameters' | 'draws'
> & {
  /** Of these sets only, oldest first. */
  observations: StrengthEstimate['observations'];
};

/** The estimate before with what the newest sets changed. Its course before them, its rise and what it left out stay. */
export function withTakenIn(before: StrengthEstimate, taken: TakenIn): StrengthEstimate {
  const firstOn = taken.observations[0]?.on ?? taken.on;
  // The last point is the day that was asked for, which need not have been one of training.
  const earlier = before.history.filter(({ on }) => on < firstOn && on !== before.on);
  return {
    ...before,
    ...taken,
    history: [...earlier, { on: taken.on, ...taken.maxKg }],
    observations: [...before.observations, ...taken.observations],
  };
}

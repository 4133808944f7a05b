/** What a lifter's maximum of one lift was and may be in a season's weeks, in the unit of the letters; `at` in weeks from the left edge. */
export interface SeasonStrengthScene {
  /** "Maximum of Ilse, squat" */
  title: string;
  unit: string;
  /** The estimate of then, oldest first, between low and high 80 times of 100. */
  past: readonly { at: number; low: number; middle: number; high: number }[];
  /** The range of the weeks ahead, from today on; it has no middle. */
  ahead: readonly { at: number; low: number; high: number }[];
  /** Straight bars that were heavier than all before. */
  bests: readonly { at: number; load: number; atMeet: boolean }[];
  meetsAt: readonly number[];
}

/** Lowest and highest value shown; null where there is nothing to show. */
export function strengthSpan({ past, ahead, bests }: SeasonStrengthScene): [number, number] | null {
  const all = [
    ...past.flatMap(({ low, high }) => [low, high]),
    ...ahead.flatMap(({ low, high }) => [low, high]),
    ...bests.map(({ load }) => load),
  ];
  if (past.length + ahead.length === 0) return null;
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const margin = 0.08 * (high - low || high);
  return [low - margin, high + margin];
}

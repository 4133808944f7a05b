import { type Belief, beliefOfMixture } from './belief.ts';
import type { StrengthPosterior } from './estimateStrength.ts';
import type { FilteredAnswer } from './filteredAnswers.ts';
import type { Lattice } from './lattice.ts';
import { modelErrorOf, withModelError } from './modelError.ts';
import { smoothed } from './smoothed.ts';

/**
 * ln strength at the last session of every week, with the whole log known: mixtures over the answers. `value` turns ln total
 * mass into what is wanted (kg on the bar) and must rise.
 */
export function strengthHistory(
  { sessions }: Pick<StrengthPosterior, 'sessions'>,
  answers: readonly FilteredAnswer[],
  value: (lnTotal: number, day: number) => number,
): { day: number; belief: Belief }[] {
  const paths = answers.map(({ parameters, result }) => smoothed(sessions, result, parameters));
  const error = modelErrorOf(sessions);
  return sessions.flatMap(({ day }, i) => {
    const next = sessions[i + 1];
    if (next !== undefined && Math.floor(next.day / 7) === Math.floor(day / 7)) return [];
    const parts = paths.map((path): { weight: number; strength: Lattice } => ({
      weight: 1,
      strength: withModelError(path[i]!, error, 0),
    }));
    return [{ day, belief: beliefOfMixture(parts, (lnTotal) => value(lnTotal, day)) }];
  });
}

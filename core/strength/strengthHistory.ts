import { type Belief, beliefOfMixture } from './belief.ts';
import { evenly, type StrengthPosterior } from './estimateStrength.ts';
import { gridFilter, smoothed } from './gridFilter.ts';
import type { Lattice } from './lattice.ts';

/** The pass back is made for this many answers, chosen by their weight. */
const ANSWERS = 24;

/**
 * ln strength at the last session of every week, with the whole log known: mixtures over the weightiest answers. `value`
 * turns ln total mass into what is wanted (kg on the bar) and must rise.
 */
export function strengthHistory(
  { particles, sessions, lift, start }: StrengthPosterior,
  value: (lnTotal: number, day: number) => number,
): { day: number; belief: Belief }[] {
  const chosen = evenly(particles, ANSWERS);
  const paths = chosen.map(({ parameters }) =>
    smoothed(sessions, gridFilter(sessions, lift, start, parameters, true), parameters),
  );
  return sessions.flatMap(({ day }, i) => {
    const next = sessions[i + 1];
    if (next !== undefined && Math.floor(next.day / 7) === Math.floor(day / 7)) return [];
    const parts = paths.map((path): { weight: number; strength: Lattice } => ({
      weight: 1 / paths.length,
      strength: path[i]!,
    }));
    return [{ day, belief: beliefOfMixture(parts, (lnTotal) => value(lnTotal, day)) }];
  });
}

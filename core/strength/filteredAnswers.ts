import { evenly, type Particle, type StrengthPosterior } from './estimateStrength.ts';
import { type GridResult, gridFilter } from './gridFilter.ts';

/** One equally likely answer with what it makes of every session. */
export interface FilteredAnswer extends Pick<Particle, 'parameters' | 'strength'> {
  result: GridResult;
}

/** Strength before today is told by so many answers, chosen by their weight. */
const ANSWERS = 24;

/** The grid filter over the whole log once more for some answers, kept session by session: pictures look back on it. */
export function filteredAnswers({ particles, sessions, lift, start }: StrengthPosterior): FilteredAnswer[] {
  return evenly(particles, ANSWERS).map(({ parameters, strength }) => ({
    parameters,
    strength,
    result: gridFilter(sessions, lift, start, parameters, true),
  }));
}

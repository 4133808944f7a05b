import type { Particle, StrengthPosterior } from './estimateStrength.ts';
import { type GridResult, gridFilter } from './gridFilter.ts';
import { meanLnOf } from './lattice.ts';

/** One equally likely answer with what it makes of every session. */
export interface FilteredAnswer extends Pick<Particle, 'parameters' | 'strength'> {
  result: GridResult;
}

/** Strength before today is told by so many answers, chosen by their weight. */
const ANSWERS = 16;

/** The grid filter over the whole log once more for some answers, kept session by session: pictures look back on it. */
export function filteredAnswers({ particles, sessions, lift, start }: StrengthPosterior): FilteredAnswer[] {
  return evenly(particles, ANSWERS).map(({ parameters, strength }) => ({
    parameters,
    strength,
    result: gridFilter(sessions, lift, start, parameters, true),
  }));
}

/** Equally likely answers by even steps through the weights, from the weakest today to the strongest: a few then stand for all. */
function evenly(particles: readonly Particle[], count: number): Particle[] {
  const byStrength = particles
    .map((particle) => ({ particle, meanLn: meanLnOf(particle.strength) }))
    .sort((a, b) => a.meanLn - b.meanLn);
  let before = 0;
  let at = 0;
  return Array.from({ length: count }, (_, i) => {
    while (at < particles.length - 1 && before + byStrength[at]!.particle.weight < (i + 0.5) / count) {
      before += byStrength[at]!.particle.weight;
      at++;
    }
    return byStrength[at]!.particle;
  });
}

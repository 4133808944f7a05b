import type { Particle } from './estimateStrength.ts';
import { type Parameters, parameterNames } from './parameters.ts';

/** The mean of every parameter over the weighted answers. */
export function middleParameters(particles: readonly Pick<Particle, 'parameters' | 'weight'>[]): Parameters {
  const middle = { ...particles[0]!.parameters };
  for (const name of parameterNames)
    middle[name] = particles.reduce((sum, { weight, parameters }) => sum + weight * parameters[name], 0);
  return middle;
}

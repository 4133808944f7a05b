import type { Draw } from './Draw.ts';
import type { Particle } from './estimateStrength.ts';
import { STEP_LN } from './lattice.ts';

/** The golden ratio's fraction steps through the strengths of the draws evenly, whatever their order. */
const GOLDEN = 0.6180339887498949;

/** `count` equally likely answers out of the weighted ones (`asTold`, where their strength is told); always the same for the same ones. */
export function drawsOf(
  particles: readonly Pick<Particle, 'parameters' | 'weight' | 'strength'>[],
  count: number,
): Draw[] {
  const sums = particles.map(({ strength }) => strength.weights.reduce((sum, w) => sum + w, 0));
  let before = 0;
  let at = 0;
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    while (at < particles.length - 1 && before + particles[at]!.weight < share) {
      before += particles[at]!.weight;
      at++;
    }
    const { parameters, strength } = particles[at]!;
    const wanted = ((0.5 + i * GOLDEN) % 1) * sums[at]!;
    let below = 0;
    let k = 0;
    while (k < strength.weights.length - 1 && below + strength.weights[k]! < wanted)
      below += strength.weights[k++]!;
    const within = (wanted - below) / Math.max(strength.weights[k]!, 1e-300);
    return { ...parameters, lnTotal: (strength.first + k - 0.5 + Math.min(within, 1)) * STEP_LN };
  });
}

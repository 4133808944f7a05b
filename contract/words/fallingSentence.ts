import type { FallingForce } from '#core/band/fallingForces.ts';
import { timesRest } from './timesRest.ts';

/**
 * What is odd about two readings, and what to do. `lengthText` writes a length as the reader typed it; left out: as a multiple
 * of the loop at rest, whatever the unit was.
 */
export function fallingSentence(
  { direction, shorter, longer }: FallingForce,
  restLengthM: number,
  lengthText = (lengthM: number) => timesRest(lengthM, restLengthM),
): string {
  const less = Math.round(100 * (1 - longer.forceN / shorter.forceN));
  const way = direction === 'loading' ? 'lengthening' : 'shortening';
  return `Reads ${less} % less force at ${lengthText(longer.lengthM)} than at ${lengthText(shorter.lengthM)} while ${way}: no band pulls less when it is longer, so read both again.`;
}

import type { FallingForce } from '#core/band/fallingForces.ts';

/** What is odd about two readings, and what to do; lengths as multiples of the loop at rest, whatever unit they were typed in. */
export function fallingSentence({ direction, shorter, longer }: FallingForce, restLengthM: number): string {
  const less = Math.round(100 * (1 - longer.forceN / shorter.forceN));
  const times = (lengthM: number) => (lengthM / restLengthM).toFixed(2);
  const way = direction === 'loading' ? 'lengthening' : 'shortening';
  return `Read with ${less} % less force at ${times(longer.lengthM)} times its rest length than at ${times(shorter.lengthM)} times, while ${way}: no band pulls less when longer, so read both again.`;
}

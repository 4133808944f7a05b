import { seededChance } from '../numeric/seededChance.ts';
import type { PairedLifters } from './pairAlike.ts';

/** The first or the second of two ways. */
export type Way = 0 | 1;

/**
 * Who gets which way: one coin a pair, in the order given, then one for each two of those who are alone, and one for the last. The same
 * seed gives the same draw on every machine; both ways get as many lifters, or one of them one more.
 */
export function drawWays({ pairs, alone }: PairedLifters, seed: number): Map<string, Way> {
  const chance = seededChance(seed);
  const drawn = new Map<string, Way>();
  const couples = [
    ...pairs.map(({ lifterIds }) => lifterIds),
    ...alone.flatMap((lifterId, i) => (i % 2 === 0 ? [[lifterId, alone[i + 1]] as const] : [])),
  ];
  for (const [one, other] of couples) {
    const way = chance.coin() ? 1 : 0;
    drawn.set(one, way);
    if (other !== undefined) drawn.set(other, way === 1 ? 0 : 1);
  }
  return drawn;
}

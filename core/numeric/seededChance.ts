import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers from 0 to below 1 that are the same for the same seed, a whole number from 0 to 2^31 - 1, on every machine. */
export function seededShares(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}

/** A stream of chance, the same for the same seed. */
export interface SeededChance {
  share(): number;
  coin(): boolean;
  /** Normal, mean 0 and standard deviation 1 (Box & Muller 1958, Ann Math Stat 29:610). */
  normal(): number;
}

/** So many numbers are passed over: the first ones of a generator of this sort still show its seed. */
const PASSED_OVER = 32;

export function seededChance(seed: number): SeededChance {
  const share = seededShares(scrambled(seed));
  for (let i = 0; i < PASSED_OVER; i++) share();
  return {
    share,
    coin: () => share() < 0.5,
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share()),
  };
}

/** Neighbouring seeds give streams that go together, since the generator is linear: the bits are mixed first (Appleby's finaliser of MurmurHash3, from memory). */
function scrambled(seed: number): number {
  let bits = seed | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}

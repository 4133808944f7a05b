import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A seeded stream of chance: the invented history is the same on every machine. */
export interface Chance {
  between(low: number, high: number): number;
  /** Normal, mean 0, standard deviation 1. */
  bell(): number;
  /** The same for nine draws of ten; the tenth scatters two and a half times as wide. */
  fatBell(): number;
  happens(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
}

const WIDE_SHARE = 0.1;
const WIDE_FACTOR = 2.5;

export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  // Neighbouring seeds begin alike.
  for (let i = 0; i < 32; i += 1) uniform();
  // Box & Muller 1958, Ann Math Stat 29:610.
  const bell = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return {
    between: (low, high) => low + (high - low) * uniform(),
    bell,
    fatBell: () => bell() * (uniform() < WIDE_SHARE ? WIDE_FACTOR : 1),
    happens: (probability) => uniform() < probability,
    pick: (list) => list[Math.floor(uniform() * list.length)]!,
  };
}

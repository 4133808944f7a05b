import type { Tiring } from './Tiring.ts';

/** Strength that a lifter has lost, in ln, by how soon it comes back. */
export interface Fatigue {
  fastLn: number;
  slowLn: number;
}

export const RESTED: Fatigue = { fastLn: 0, slowLn: 0 };

/** After a rep of so much effort. */
export function tired({ fastLn, slowLn }: Fatigue, effortS: number, tiring: Tiring): Fatigue {
  const lossLn = tiring.perSecond * effortS;
  return {
    fastLn: fastLn + tiring.fastShare * lossLn,
    slowLn: slowLn + (1 - tiring.fastShare) * lossLn,
  };
}

/** After a rest. */
export function recovered({ fastLn, slowLn }: Fatigue, restS: number, tiring: Tiring): Fatigue {
  return {
    fastLn: fastLn * Math.exp(-restS / tiring.fastS),
    slowLn: slowLn * Math.exp(-restS / tiring.slowS),
  };
}

export function lostLn({ fastLn, slowLn }: Fatigue): number {
  return fastLn + slowLn;
}

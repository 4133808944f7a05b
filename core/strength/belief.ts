import { normalQuantile } from '../numeric/normal.ts';
import type { Lattice } from './lattice.ts';
import { STEP_LN } from './lattice.ts';

/** The middle of what is believed, and the ranges that hold it with 80 and 95 %. */
export interface Belief {
  median: number;
  low80: number;
  high80: number;
  low95: number;
  high95: number;
}

/** A belief that is normal. */
export function normalBelief(mean: number, sd: number): Belief {
  return beliefFrom((share) => mean + sd * normalQuantile(share));
}

/** The standard deviation of the normal with this 80 % interval. */
export function sdOfBelief({ low80, high80 }: Pick<Belief, 'low80' | 'high80'>): number {
  return (high80 - low80) / (2 * normalQuantile(0.9));
}

/** A belief from equally likely values. */
export function beliefOf(values: readonly number[]): Belief {
  const sorted = [...values].sort((a, b) => a - b);
  return beliefFrom((share) => {
    const x = share * sorted.length - 0.5;
    const i = Math.min(Math.max(Math.floor(x), 0), sorted.length - 1);
    const next = sorted[Math.min(i + 1, sorted.length - 1)]!;
    return sorted[i]! + Math.min(Math.max(x - i, 0), 1) * (next - sorted[i]!);
  });
}

/** A belief of a quantity that rises with ln strength, from weighted lattices. */
export function beliefOfMixture(
  parts: readonly { weight: number; strength: Lattice }[],
  value: (lnTotal: number) => number,
): Belief {
  const first = Math.floor(Math.min(...parts.map(({ strength }) => strength.first)));
  const last = Math.ceil(Math.max(...parts.map(({ strength }) => strength.first + strength.weights.length)));
  const mixed = new Float64Array(last - first + 2);
  for (const { weight, strength } of parts) {
    const offset = strength.first - first;
    const whole = Math.floor(offset);
    const share = offset - whole;
    strength.weights.forEach((w, i) => {
      mixed[i + whole]! += weight * w * (1 - share);
      mixed[i + whole + 1]! += weight * w * share;
    });
  }
  const sum = mixed.reduce((total, w) => total + w, 0);
  return beliefFrom((share) => {
    let before = 0;
    let i = 0;
    while (i < mixed.length - 1 && before + mixed[i]! < share * sum) before += mixed[i++]!;
    const within = (share * sum - before) / mixed[i]!;
    return value((first + i - 0.5 + within) * STEP_LN);
  });
}

function beliefFrom(quantile: (share: number) => number): Belief {
  return {
    median: quantile(0.5),
    low80: quantile(0.1),
    high80: quantile(0.9),
    low95: quantile(0.025),
    high95: quantile(0.975),
  };
}

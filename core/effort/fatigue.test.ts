import { describe, expect, it } from 'vitest';
import { lostLn, RESTED, recovered, tired } from './fatigue.ts';
import { tiringOf } from './Tiring.ts';

describe('rest', () => {
  const tiring = tiringOf('squat');
  /** Share of what a rep has cost that is still missing after a rest. */
  const missing = (restS: number) => {
    const after = tired(RESTED, 3, tiring);
    return lostLn(recovered(after, restS, tiring)) / lostLn(after);
  };

  it('brings back by the two halves of phosphocreatine: most in 22 s, the rest in 170', () => {
    // Harris et al. 1976, Pflügers Arch 367:137 (from memory): half-times of 22 and 170 s; 0.85 of it the fast one.
    // 22 s: 0.85 / 2 + 0.15 x 0.5^(22/170) = 0.425 + 0.1371; 170 s: 0.85 x 0.5^7.727 + 0.15 / 2 = 0.0040 + 0.075;
    // 10 min: nothing of the fast, 0.15 x 0.5^3.529 = 0.0130 of the slow.
    expect(missing(0)).toBeCloseTo(1, 12);
    expect(missing(22)).toBeCloseTo(0.5621, 4);
    expect(missing(170)).toBeCloseTo(0.079, 4);
    expect(missing(600)).toBeCloseTo(0.013, 4);
  });

  it('is the same share of the same effort in every lift', () => {
    for (const lift of ['bench', 'deadlift'] as const) {
      const { fastShare, fastS, slowS, loweringS } = tiringOf(lift);
      expect({ fastShare, fastS, slowS, loweringS }).toEqual({
        fastShare: tiring.fastShare,
        fastS: tiring.fastS,
        slowS: tiring.slowS,
        loweringS: tiring.loweringS,
      });
    }
  });

  it('follows a way down that is controlled and not drawn out: five reps take six seconds of it', () => {
    // Common practice, no source: a bit more than a second each.
    expect(5 * tiring.loweringS).toBeCloseTo(6, 9);
  });
});

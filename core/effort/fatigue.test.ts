import { describe, expect, it } from 'vitest';
import { barPart } from './barPart.ts';
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

  it('has to bring back what each second of full effort costs, on top of what was missing', () => {
    const once = tired(RESTED, 3, tiring);
    expect(lostLn(once)).toBeCloseTo(3 * tiring.perSecond, 12);
    expect(lostLn(tired(once, 2, tiring))).toBeCloseTo(5 * tiring.perSecond, 12);
  });

  it('is the same share of the same effort in every lift', () => {
    for (const lift of ['bench', 'deadlift'] as const) {
      const { fastShare, fastS, slowS, loweringS, bend } = tiringOf(lift);
      // Until a lifter's own sets tell it, each rep of a set costs alike (docs/model.md, "effort").
      expect({ fastShare, fastS, slowS, loweringS, bend }).toEqual({
        bend: 0,
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

describe('the part of strength for the bar', () => {
  it('is what the body leaves of it, more with strength to spare: 1 - share e^-u', () => {
    // docs/model.md, "effort": of a body that is 0.4 of the load 0.6 are left at the limit, 0.8 where twice as much could be lifted.
    expect(barPart(0.4, 0)).toBeCloseTo(0.6, 12);
    expect(barPart(0.4, Math.LN2)).toBeCloseTo(0.8, 12);
    expect(barPart(0.4, -1)).toBeCloseTo(0.6, 12);
    expect([barPart(0, 0.3), barPart(1, 0)]).toEqual([1, 0]);
  });
});

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandForm } from './bandForms.ts';
import { bandPrior } from './bandPrior.ts';
import { fitBand } from './fitBand.ts';
import { pairMismatch } from './pairMismatch.ts';

function loop(muN: number, restLengthM = 1) {
  const force = bandForm('neoHookean').force([muN]);
  const readings = [1.2, 1.5, 1.8, 2.1].map((lengthM) => ({
    lengthM,
    forceN: force(lengthM / restLengthM),
    direction: 'loading' as const,
  }));
  return fitBand({ restLengthM, readings }).loading;
}

const stiffness = fc.double({ min: 40, max: 600, noNaN: true });

describe('pairMismatch', () => {
  it('is the difference over the mean for loops of one shape, and turns its sign with the sides', () => {
    fc.assert(
      fc.property(stiffness, stiffness, (a, b) => {
        const { share } = pairMismatch(loop(a), loop(b), 0.05);
        expect(share).toBeCloseTo((2 * (a - b)) / (a + b), 6);
        expect(pairMismatch(loop(b), loop(a), 0.05).share).toBeCloseTo(-share!, 9);
      }),
      { numRuns: 30 },
    );
  });

  it('flags a pair beyond the share that is allowed, and only then', () => {
    expect(pairMismatch(loop(200), loop(209), 0.05).flagged).toBe(false);
    expect(pairMismatch(loop(200), loop(212), 0.05).flagged).toBe(true);
    expect(pairMismatch(loop(212), loop(200), 0.05).flagged).toBe(true);
  });

  it('sees that the longer of two loops alike pulls less at one height', () => {
    const { share, flagged } = pairMismatch(loop(200, 1.05), loop(200, 1), 0.05);
    expect(share).toBeLessThan(-0.05);
    expect(flagged).toBe(true);
  });

  it('claims nothing of a band that was not measured', () => {
    expect(pairMismatch(loop(200), bandPrior(1, 41, 'loading'), 0.05)).toEqual({
      share: null,
      flagged: false,
    });
  });
});

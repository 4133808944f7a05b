import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandForm } from './bandForms.ts';
import { bandTension, bandTensionInterval } from './bandTension.ts';
import { fitBand } from './fitBand.ts';

const REST_M = 1;

function lineThrough(shorterM: number, shorterN: number, longerM: number, longerN: number) {
  return fitBand({
    restLengthM: REST_M,
    readings: [
      { lengthM: longerM, forceN: longerN, direction: 'loading' },
      { lengthM: shorterM, forceN: shorterN, direction: 'loading' },
    ],
  }).loading;
}

const twoReadings = fc.record({
  shorterM: fc.double({ min: 1.05, max: 1.8, noNaN: true }),
  stepM: fc.double({ min: 0.2, max: 1, noNaN: true }),
  shorterN: fc.double({ min: 10, max: 300, noNaN: true }),
  stepN: fc.double({ min: 5, max: 600, noNaN: true }),
});

describe('a band read at two lengths', () => {
  it('is a straight line through both, and on beyond the longer', () => {
    fc.assert(
      fc.property(twoReadings, fc.double({ min: 0, max: 2, noNaN: true }), (r, t) => {
        const curve = lineThrough(r.shorterM, r.shorterN, r.shorterM + r.stepM, r.shorterN + r.stepN);
        expect(curve.model).toBe('line');
        expect(bandTension(curve, r.shorterM + t * r.stepM)).toBeCloseTo(r.shorterN + t * r.stepN, 8);
      }),
    );
  });

  it('comes down to slack without a jump: the lower of the line and the chord from the rest length', () => {
    fc.assert(
      fc.property(twoReadings, fc.double({ min: 0, max: 1, noNaN: true }), (r, t) => {
        const curve = lineThrough(r.shorterM, r.shorterN, r.shorterM + r.stepM, r.shorterN + r.stepN);
        const lengthM = REST_M + t * (r.shorterM - REST_M);
        const line = r.shorterN - ((r.shorterM - lengthM) * r.stepN) / r.stepM;
        const tensionN = bandTension(curve, lengthM);
        expect(tensionN).toBeCloseTo(Math.max(0, Math.min(line, r.shorterN * t)), 8);
      }),
    );
  });

  it('has an interval that holds natural rubber bent through both readings, between and beside them', () => {
    // Kawabata 1981 as Mooney-Rivlin, C1 0.13510 and C2 0.06357 MPa, in a loop of 369 mm2.
    const rubber = bandForm('mooneyRivlin').force([0.1351 * 369, 0.06357 * 369]);
    fc.assert(
      fc.property(
        fc.double({ min: 1.08, max: 1.6, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 1.02, max: 2.4, noNaN: true }),
        (shorterM, stepM, lengthM) => {
          const curve = lineThrough(shorterM, rubber(shorterM), shorterM + stepM, rubber(shorterM + stepM));
          const { low95N, high95N } = bandTensionInterval(curve, lengthM);
          expect(rubber(lengthM)).toBeGreaterThan(low95N);
          expect(rubber(lengthM)).toBeLessThan(high95N);
        },
      ),
    );
  });

  it('is wider than a fit of five readings of the same loop', () => {
    const rubber = bandForm('mooneyRivlin').force([50, 23]);
    const read = (lambda: number) => ({
      lengthM: lambda,
      forceN: rubber(lambda),
      direction: 'loading' as const,
    });
    const two = fitBand({ restLengthM: 1, readings: [1.2, 2.2].map(read) }).loading;
    const five = fitBand({ restLengthM: 1, readings: [1.2, 1.4, 1.7, 1.9, 2.2].map(read) }).loading;
    for (const lambda of [1.1, 1.3, 1.6, 2, 2.4]) {
      expect(bandTensionInterval(two, lambda).sdN).toBeGreaterThan(
        1.5 * bandTensionInterval(five, lambda).sdN,
      );
    }
  });

  it('is no line where the longer look showed less: then the simplest rubber, and doubt', () => {
    const curve = lineThrough(1.5, 120, 1.6, 110);
    expect(curve.model).toBe('neoHookean');
    expect(curve.residualScale).toBeGreaterThan(2);
  });
});

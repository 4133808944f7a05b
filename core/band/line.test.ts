import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandForm } from './bandForms.ts';
import { bandTension, bandTensionInterval } from './bandTension.ts';
import { fitBand } from './fitBand.ts';
import { lineSpread } from './lineSpread.ts';

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

const read = (lengthM: number, forceN: number) => ({ lengthM, forceN, direction: 'loading' as const });

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

  it('is known as the mean of what was read at each length, and errs with either force by as much as it follows it', () => {
    const readings = [read(1.5, 100), read(1.5, 100), read(2, 300)];
    const { loading } = fitBand({ restLengthM: REST_M, readings });
    expect(loading.parameters).toEqual([100, 300, 1.5, 2].map((value) => expect.closeTo(value, 9)));
    // Reading error sqrt((0.015 F)^2 + 2^2); nothing scatters: s^2 = 2 / (2 + 3 - 2).
    expect([loading.covariance[0]![0], loading.covariance[1]![1]]).toEqual([
      expect.closeTo(((1.5 ** 2 + 4) / 2) * (2 / 3), 9),
      expect.closeTo((4.5 ** 2 + 4) * (2 / 3), 9),
    ]);
    // Nothing else is in doubt: lengths are taken as read, and what was read at one tells nothing of the other's error.
    expect(loading.covariance.flat().filter((value) => value !== 0)).toHaveLength(2);
    const byShape = lineSpread({ ...loading, covariance: [[0], [0, 0]] }, 1.8);
    const errsBy = (k: 0 | 1, lengthM: number) =>
      Math.sqrt(
        lineSpread({ ...loading, covariance: k === 0 ? [[1], [0, 0]] : [[0], [0, 1]] }, lengthM) -
          lineSpread({ ...loading, covariance: [[0], [0, 0]] }, lengthM),
      );
    expect(byShape).toBeGreaterThan(0);
    // Between and beyond on the line; below by the lower of line and chord: here the line, which comes to nought at 1.25 m.
    for (const lengthM of [1.3, 1.6, 1.9, 2.2]) {
      for (const k of [0, 1] as const) {
        const more = { ...loading, parameters: loading.parameters.with(k, loading.parameters[k]! + 1e-3) };
        const follows = (bandTension(more, lengthM) - bandTension(loading, lengthM)) / 1e-3;
        expect(errsBy(k, lengthM)).toBeCloseTo(Math.abs(follows), 6);
      }
    }
    // The chord of a loop that gives way: 200 N at 1.5 m, 250 N at 2 m; at 1.25 m half of the first, nothing of the second.
    const soft = fitBand({ restLengthM: REST_M, readings: [read(1.5, 200), read(2, 250)] }).loading;
    const variance = (covariance: number[][]) => lineSpread({ ...soft, covariance }, 1.25);
    const none = variance([[0], [0, 0]]);
    expect(variance([[1], [0, 0]]) - none).toBeCloseTo(0.25, 9);
    expect(variance([[0], [0, 1]])).toBe(none);
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
    const of = (...lengthsM: number[]) =>
      fitBand({ restLengthM: 1, readings: lengthsM.map((lengthM) => read(lengthM, rubber(lengthM))) })
        .loading;
    const two = of(1.2, 2.2);
    const five = of(1.2, 1.4, 1.7, 1.9, 2.2);
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

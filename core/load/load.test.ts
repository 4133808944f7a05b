import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitBand } from '../band/fitBand.ts';
import { bareLoad } from './bareLoad.ts';
import type { Load } from './Load.ts';
import { loadCurve } from './loadCurve.ts';
import { STANDARD_GRAVITY_MPS2 } from './localGravity.ts';

const REST_M = 1.04;
const STIFFNESS_N = 300;
const readings = [1.1, 1.3, 1.5, 1.8, 2.1, 2.4].map((lambda) => ({
  lengthM: lambda * REST_M,
  forceN: STIFFNESS_N * (lambda - lambda ** -2),
  direction: 'loading' as const,
}));
const curves = fitBand({ restLengthM: REST_M, widthMm: 45, readings });
const banded = (bottomM: number, lockoutM: number, zM = 0.1): Load => ({
  ...bareLoad(bottomM, lockoutM),
  barKg: 100,
  bands: [{ curves, hookup: { way: 'doubled' }, anchor: { xM: 0, yM: 0, zM }, count: 2 }],
});

// Neo-Hookean strain energy: W = (mu/2)(lambda^2 + 2/lambda - 3) per volume (Treloar 1943; Rivlin 1948).
const energyJ = (lambda: number) => (STIFFNESS_N * REST_M * (lambda ** 2 + 2 / lambda - 3)) / 2;
/** Of a loop that runs doubled from 0.1 m above the floor. */
const stretch = (zM: number) => (2 * (zM - 0.1)) / REST_M;

describe('the load curve', () => {
  it('does the work of weight and of the strain energy stored in the rubber', () => {
    const curve = loadCurve(banded(0.9, 1.4), 5);
    const expectedJ = 100 * STANDARD_GRAVITY_MPS2 * 0.5 + 2 * (energyJ(stretch(1.4)) - energyJ(stretch(0.9)));
    expect(curve.workJ / expectedJ).toBeCloseTo(1, 6);
    expect(curve.meanN).toBeCloseTo(curve.workJ / 0.5, 9);
  });

  it('counts a chain as the weight of what hangs: the work is that of a triangle', () => {
    const chains = [{ massPerMetreKg: 4, lengthM: 3, attachBelowBarM: 0, count: 2 }];
    const { workJ } = loadCurve({ ...banded(0.9, 1.4), bands: [], chains }, 2);
    expect(workJ).toBeCloseTo((100 * 0.5 + (8 * (1.4 ** 2 - 0.9 ** 2)) / 2) * STANDARD_GRAVITY_MPS2, 9);
  });

  it('reports the height below which the bands are slack, and a bar that is then alone', () => {
    const curve = loadCurve(banded(0.5, 1.1), 2);
    expect(curve.slackBelowM).toBeCloseTo(0.1 + REST_M / 2, 9);
    expect(curve.bottomN).toBe(100 * STANDARD_GRAVITY_MPS2);
    expect(curve.points[0]!.sdN).toBe(0);
    expect(loadCurve(banded(0.9, 1.4), 2).slackBelowM).toBeNull();
  });

  it('gives a taller lifter more tension from the same bands in the same rack', () => {
    const heights = fc.double({ min: 0.65, max: 1.1, noNaN: true });
    fc.assert(
      fc.property(heights, fc.double({ min: 0.02, max: 0.2, noNaN: true }), (bottomM, taller) => {
        const short = loadCurve(banded(bottomM, bottomM + 0.4), 3);
        const tall = loadCurve(banded(bottomM + taller, bottomM + taller + 0.4), 3);
        expect(tall.lockoutN).toBeGreaterThan(short.lockoutN);
        expect(tall.bottomN).toBeGreaterThan(short.bottomN);
      }),
    );
  });

  it('adds what two loops of one curve err by, and in squares what two of different curves do', () => {
    // A loop off by x N is off twice in a pair cut from one curve: 2 x. Two of their own are off by x each, independently:
    // x times the root of 2.
    const sdOf = (bands: Load['bands']) => loadCurve({ ...banded(0.9, 1.4), bands }, 2).points[1]!.sdN;
    const [pair] = banded(0.9, 1.4).bands;
    const one = { ...pair!, count: 1 };
    expect(sdOf([pair!]) / sdOf([one])).toBeCloseTo(2, 9);
    expect(sdOf([one, one]) / sdOf([one])).toBeCloseTo(Math.SQRT2, 9);
  });
});

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitBand } from '../band/fitBand.ts';
import { bareLoad } from './bareLoad.ts';
import { compileLoad, griddedLoad } from './compileLoad.ts';
import type { Load } from './Load.ts';
import { loadCurve } from './loadCurve.ts';
import { STANDARD_GRAVITY_MPS2 } from './localGravity.ts';
import { meanBandShare } from './meanBandShare.ts';
import { meanBodyShare } from './meanBodyShare.ts';

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
    // Even heights; four legs of each doubled loop, two loops, beside the weight.
    expect(curve.points.map(({ s }) => s)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    for (const { s, zM, totalN } of curve.points) {
      expect(zM).toBeCloseTo(0.9 + 0.5 * s, 12);
      const tensionN = STIFFNESS_N * (stretch(zM) - stretch(zM) ** -2);
      expect(totalN / (100 * STANDARD_GRAVITY_MPS2 + 4 * tensionN)).toBeCloseTo(1, 6);
    }
    const { bottomN, midN, lockoutN } = curve;
    expect([bottomN, midN, lockoutN]).toEqual([0, 2, 4].map((i) => curve.points[i]!.totalN));
  });

  it('counts a chain as the weight of what hangs: the work is that of a triangle', () => {
    const chains = [{ massPerMetreKg: 4, lengthM: 3, attachBelowBarM: 0, count: 2 }];
    const { workJ, points } = loadCurve({ ...banded(0.9, 1.4), bands: [], chains }, 2);
    const compiled = compileLoad({ ...banded(0.9, 1.4), chains });
    expect([0.9, 1.4].map(compiled.totalN)).toEqual([0.9, 1.4].map((zM) => compiled.at(zM).totalN));
    expect(points[0]!.chainN).toBeCloseTo(8 * 0.9 * STANDARD_GRAVITY_MPS2, 9);
    expect(workJ).toBeCloseTo((100 * 0.5 + (8 * (1.4 ** 2 - 0.9 ** 2)) / 2) * STANDARD_GRAVITY_MPS2, 9);
  });

  it('reports the height below which the bands are slack, and a bar that is then alone', () => {
    const curve = loadCurve(banded(0.5, 1.1), 2);
    expect(curve.slackBelowM).toBeCloseTo(0.1 + REST_M / 2, 9);
    expect(curve.bottomN).toBe(100 * STANDARD_GRAVITY_MPS2);
    expect(curve.points[0]!.sdN).toBe(0);
    // A bend of the path below that height is a kink, too, and the bands are slack on both sides of it.
    const bent = loadCurve({ ...banded(0.5, 1.1), path: [{ zM: 0.55, xM: 0 }] }, 2);
    expect(bent.slackBelowM).toBeCloseTo(0.1 + REST_M / 2, 9);
    expect(loadCurve(banded(0.9, 1.4), 2).slackBelowM).toBeNull();
    expect(loadCurve(banded(0.2, 0.5), 2).slackBelowM).toBeNull();
  });

  it('pulls forward by T x / l for each band with its anchor in front, and not at all between two alike', () => {
    const [pair] = banded(0.9, 1.4).bands;
    const foreAftN = (...xM: number[]) => {
      const bands = xM.map((x) => ({ ...pair!, anchor: { ...pair!.anchor, xM: x } }));
      return compileLoad({ ...banded(0.9, 1.4), bands }).at(1).foreAftN;
    };
    const lengthM = Math.hypot(0.9, 0.2);
    const lambda = (2 * lengthM) / REST_M;
    const onePairN = (4 * STIFFNESS_N * (lambda - lambda ** -2) * 0.2) / lengthM;
    expect(foreAftN(0.2) / onePairN).toBeCloseTo(1, 6);
    expect(foreAftN(0.2, 0.2) / onePairN).toBeCloseTo(2, 6);
    expect(foreAftN(0.2, -0.2)).toBeCloseTo(0, 9);
    // A path is one whatever the order in which its points are given.
    const bends = [
      { zM: 0.9, xM: -0.1 },
      { zM: 1.1, xM: 0.1 },
      { zM: 1.4, xM: 0 },
    ];
    const onPath = (path: Load['path']) => compileLoad({ ...banded(0.9, 1.4), path }).at(1.3).foreAftN;
    expect(onPath([bends[2]!, bends[0]!, bends[1]!])).toBe(onPath(bends));
  });

  it('is refused where lockout is not above the bottom', () => {
    for (const lockoutM of [0.9, 0.8, Number.NaN])
      expect(() => compileLoad(banded(0.9, lockoutM))).toThrow(
        `lockoutM ${lockoutM} must be above bottomM 0.9`,
      );
  });

  it('lifts the links of every chain, and has its kinks inside the way, each once and in order', () => {
    const chain = { massPerMetreKg: 4, lengthM: 0.3, attachBelowBarM: 0.9, count: 2 };
    const chains = [chain, { ...chain, massPerMetreKg: 3, attachBelowBarM: 1.2 }];
    const path = [1.4, 0.9, 1.3].map((zM) => ({ zM, xM: 0 }));
    const compiled = compileLoad({ ...banded(0.9, 1.4), bands: [], chains, path });
    expect([1, 1.3].map(compiled.liftedPerMetreKg)).toEqual([8, 6]);
    expect(compiled.breaksM).toEqual([1.2, 1.3].map((zM) => expect.closeTo(zM, 12)));
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

describe('a load read off cells', () => {
  it('is straight within a cell: read off one, the middle carries the mean of the ends', () => {
    const hung = {
      verticalAt: [
        { zM: 0.9, forceN: 0 },
        { zM: 1, forceN: 90 },
        { zM: 1.4, forceN: 100 },
      ],
      count: 1,
    };
    const chains = [{ massPerMetreKg: 4, lengthM: 0.2, attachBelowBarM: 0.9, count: 2 }];
    const full = { ...banded(0.9, 1.4), hungBands: [hung], chains };
    for (const load of [full, { ...full, bands: [] }, { ...full, hungBands: [] }]) {
      const exact = compileLoad(load);
      const read = griddedLoad(exact, 1);
      for (const part of ['bandN', 'hangingKg', 'liftedPerMetreKg', 'totalN'] as const) {
        const mean = (exact[part](0.9) + exact[part](1.4)) / 2;
        expect(read[part](1.15)).toBeCloseTo(mean, 9);
        expect(Math.abs(exact[part](1.15) - mean)).toBeGreaterThan(0.5);
      }
    }
  });
});

/** Bands that pull alike at every height, beside a bar. */
const held = (forceN: number, barKg: number): Load => ({
  ...bareLoad(0.5, 1.2),
  barKg,
  hungBands: [{ verticalAt: [0.5, 1.2].map((zM) => ({ zM, forceN })), count: 1 }],
});

describe('shares of the mean load', () => {
  it('of bands that pull 500 N at every height beside 100 kg: 500 of 1480.665 N; of nothing none', () => {
    expect(meanBandShare(compileLoad(held(500, 100)))).toBeCloseTo(500 / 1480.665, 9);
    expect(meanBandShare(compileLoad(held(0, 0)))).toBe(0);
  });

  it('of a body of 60 kg beside a bar of 100 kg: 60 of 160; of no body none', () => {
    expect(meanBodyShare(compileLoad(held(0, 100)), 60)).toBeCloseTo(60 / 160, 9);
    expect(meanBodyShare(compileLoad(held(0, 0)), 0)).toBe(0);
  });
});

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandCurve } from '../band/BandCurve.ts';
import { barX, heightsAtPathLength, loopPerPath, pathLengthM } from './bandPath.ts';
import { bandPull } from './bandPull.ts';
import { chainBreaksM, hangingKg, liftedPerMetreKg } from './chainHang.ts';
import { chainMass } from './chainMass.ts';
import { type HungPull, hungPull } from './hungPull.ts';
import type { Hookup, RiggedBand } from './Rig.ts';

const REST_M = 1.04;
const STIFFNESS_N = 300;

/** A loop that follows the neo-Hookean law exactly: F = C (lambda - lambda^-2) (Treloar 1943). */
const neoHookeanN = (lambda: number) => (lambda <= 1 ? 0 : STIFFNESS_N * (lambda - lambda ** -2));
const curve = (scale: number): BandCurve => ({
  model: 'neoHookean',
  parameters: [STIFFNESS_N * scale],
  parameterNames: ['stiffnessN'],
  covariance: [[9]],
  restLengthM: REST_M,
  measuredToM: 2.5,
  known: 'measured',
  direction: 'loading',
  residualScale: 0,
  degreesOfFreedom: 1e6,
});
const band = (hookup: Hookup, zM: number, more: Partial<RiggedBand> = {}): RiggedBand => ({
  curves: { loading: curve(1), unloading: curve(0.9) },
  hookup,
  anchor: { xM: 0, yM: 0, zM },
  count: 2,
  ...more,
});

/** Of a pair on an anchor 0.1 m above the floor. */
const pullAtN = (hookup: Hookup, zM: number) => bandPull(band(hookup, 0.1), [], 0.2, 3).downN(zM);

const readUpTo = (measuredToM: number) => ({ ...curve(1), measuredToM });

/** Whole centimetres: doubles of fast-check lie near 0 mostly, where every path is straight. */
const cm = (min: number, max: number) => fc.integer({ min, max }).map((at) => at / 100);

describe('a band between anchor and bar', () => {
  it('pulls as one loop when single, as four legs of half the length when doubled, as what is left when choked', () => {
    expect(pullAtN({ way: 'single' }, 1.66)).toBeCloseTo(2 * neoHookeanN(1.56 / REST_M), 9);
    // Folded: F = 4 A0 sigma(2 L / L0) for one loop of 2 A0 sigma(L / L0): geometry of four legs.
    expect(pullAtN({ way: 'doubled' }, 1)).toBeCloseTo(2 * 2 * neoHookeanN((2 * 0.9) / REST_M), 9);
    expect(pullAtN({ way: 'choked', spentM: 0.12 }, 1.6)).toBeCloseTo(2 * neoHookeanN(1.5 / 0.92), 9);
  });

  it('pulls a bar that goes straight up down by its share of the path from an anchor in front and to the side', () => {
    // 0.3 m in front, 0.4 m to the side and 1.2 m below: 1.3 m of path, of which 12 / 13 point down.
    const aside = { anchor: { xM: 0.3, yM: 0.4, zM: 0.1 } };
    const pull = bandPull(band({ way: 'single' }, 0.1, aside), [], 0.2, 3);
    expect(pull.downN(1.3)).toBeCloseTo((2 * neoHookeanN(1.3 / REST_M) * 12) / 13, 9);
    expect(pull.foreAftN(1.3)).toBeCloseTo((2 * neoHookeanN(1.3 / REST_M) * 3) / 13, 9);
  });

  it('hung from above it lifts the bar, most at the bottom, along its unloading curve', () => {
    const pull = bandPull(band({ way: 'single' }, 2.6), [], 0.7, 2.4);
    expect(pull.downN(0.8)).toBeCloseTo(-2 * 0.9 * neoHookeanN(1.8 / REST_M), 9);
    expect(pull.downN(1.2)).toBeGreaterThan(pull.downN(0.8));
    expect(pull.downN(1.7)).toBe(0);
  });

  it('pulls the lifter forward when the bar is behind the anchor, by T (x_a - x_b) / l', () => {
    const path = [
      { zM: 0.8, xM: -0.12 },
      { zM: 1.5, xM: 0 },
    ];
    const pull = bandPull(
      band({ way: 'doubled' }, 0.1, { anchor: { xM: 0.03, yM: 0.04, zM: 0.1 } }),
      path,
      0.8,
      1.5,
    );
    const lengthM = Math.hypot(0.15, 0.04, 0.7);
    const tensionN = 4 * neoHookeanN((2 * lengthM) / REST_M);
    expect(pull.foreAftN(0.8)).toBeCloseTo((tensionN * 0.15) / lengthM, 9);
    expect(pull.downN(0.8)).toBeCloseTo((tensionN * 0.7) / lengthM, 9);
    expect(pull.anchorN(0.8)).toBeCloseTo(tensionN / 2, 9);
  });

  it('goes taut at the height where its path is as long as the relaxed band', () => {
    const pull = bandPull(
      band({ way: 'single' }, 0.05, { anchor: { xM: 0.1, yM: 0, zM: 0.05 } }),
      [],
      0.6,
      1.6,
    );
    const tautM = 0.05 + Math.sqrt(REST_M ** 2 - 0.1 ** 2);
    expect(pull.breaksM).toHaveLength(1);
    expect(pull.breaksM[0]).toBeCloseTo(tautM, 12);
    expect(pull.downN(tautM - 1e-6)).toBe(0);
    expect(pull.downN(tautM + 1e-6)).toBeGreaterThan(0);
    // Doubled it is as long as half the band, choked as what is left of it.
    const tautAt = (hookup: Hookup) => bandPull(band(hookup, 0), [], 0.3, 1.6).breaksM;
    expect(tautAt({ way: 'doubled' })).toEqual([expect.closeTo(REST_M / 2, 12)]);
    expect(tautAt({ way: 'choked', spentM: 0.12 })).toEqual([expect.closeTo(REST_M - 0.12, 12)]);
  });

  it('has nothing left to stretch where the choke uses up all of it', () => {
    expect(() => loopPerPath({ way: 'choked', spentM: REST_M }, REST_M)).toThrow('spentM 1.04');
  });

  it('follows a bar that runs straight from point to point of its path, and straight up outside', () => {
    const path = [
      { zM: 0.8, xM: -0.2 },
      { zM: 1, xM: 0.1 },
      { zM: 1.4, xM: 0 },
    ];
    const x = [0.5, 0.8, 0.9, 1, 1.3, 1.4, 2].map((zM) => barX(path, zM));
    expect(x).toEqual([-0.2, -0.2, -0.05, 0.1, 0.025, 0, 0].map((xM) => expect.closeTo(xM, 12)));
    expect(barX([], 1)).toBe(0);
  });

  it('goes taut or slack on a bent path just where that is as long as the band: between two such heights it is one of both', () => {
    const bend = fc.record({ zM: cm(30, 220), xM: cm(-40, 40) });
    const bends = fc.uniqueArray(bend, { maxLength: 4, selector: ({ zM }) => zM });
    const anchors = fc.record({ xM: cm(-40, 40), yM: cm(-40, 40), zM: cm(0, 240) });
    fc.assert(
      fc.property(bends, anchors, cm(30, 140), (unsorted, anchor, lengthM) => {
        const path = unsorted.toSorted((a, b) => a.zM - b.zM);
        const tooLongM = (zM: number) => pathLengthM(anchor, barX(path, zM), zM) - lengthM;
        const found = heightsAtPathLength(anchor, path, lengthM, 0.5, 2);
        for (const zM of found) {
          expect(tooLongM(zM)).toBeCloseTo(0, 9);
          expect(zM).toBeGreaterThan(0.5);
          expect(zM).toBeLessThan(2);
        }
        const heights = Array.from({ length: 151 }, (_, i) => 0.5 + i / 100);
        for (const [i, zM] of heights.slice(1).entries()) {
          const crosses = tooLongM(heights[i]!) * tooLongM(zM) < 0;
          if (crosses) expect(found.filter((z) => z > heights[i]! - 1e-9 && z < zM + 1e-9)).not.toEqual([]);
        }
      }),
    );
  });

  it('carries the spread of its fit to the vertical pull, alike for both bands of the set', () => {
    const pull = bandPull(band({ way: 'single' }, 0), [], 0.5, 2.5);
    const lambda = 1.8 / REST_M;
    expect(pull.downSdN(1.8)).toBeCloseTo(2 * 3 * (lambda - lambda ** -2), 4);
    // On an anchor beside the bar's way only the vertical part counts.
    const aslant = bandPull(
      band({ way: 'single' }, 0.3, { anchor: { xM: -0.5, yM: 1, zM: 0.3 } }),
      [],
      0.5,
      2.5,
    );
    const lengthM = Math.hypot(0.5, 1, 1.5);
    const stretched = lengthM / REST_M;
    expect(aslant.stretch(1.8)).toBeCloseTo(stretched, 12);
    const part = 1.5 / lengthM;
    expect(aslant.downN(1.8)).toBeCloseTo(2 * neoHookeanN(stretched) * part, 9);
    expect(aslant.downSdN(1.8)).toBeCloseTo(2 * 3 * (stretched - stretched ** -2) * part, 4);
    // Doubled: the sleeve carries the loop's force, and so its error, twice.
    const doubled = bandPull(band({ way: 'doubled' }, 0), [], 0.5, 2.5);
    expect(doubled.downSdN(0.9)).toBeCloseTo(2 * pull.downSdN(1.8), 9);
  });

  it('is known less well choked, by all that 2 cm more or less used up by the choke change, also where it just hangs slack', () => {
    const spentM = 0.12;
    const pull = bandPull(band({ way: 'choked', spentM }, 0), [], 0.5, 2.5);
    const changeN = (lengthM: number) => {
      const byM = 0.02 * (lengthM / (REST_M - spentM));
      const at = (lM: number) => 2 * neoHookeanN(lM / (REST_M - spentM));
      return (at(lengthM + byM) - at(lengthM - byM)) / 2;
    };
    const lambda = 1.8 / (REST_M - spentM);
    // The spread of the fit, as above, and that of the choke.
    expect(pull.downSdN(1.8)).toBeCloseTo(Math.hypot(2 * 3 * (lambda - lambda ** -2), changeN(1.8)), 4);
    const slackM = REST_M - spentM - 0.01;
    expect(pull.downN(slackM)).toBe(0);
    expect(pull.downSdN(slackM)).toBeCloseTo(changeN(slackM), 9);
    expect(pull.downSdN(slackM - 0.02)).toBe(0);
  });

  it('goes beyond its readings by the branch that it follows, and never while slack', () => {
    const curves = { loading: readUpTo(1.5), unloading: readUpTo(1.2) };
    const below = bandPull(band({ way: 'single' }, 0, { curves }), [], 0.5, 2.5);
    expect([1, 1.49, 1.51].map(below.extrapolated)).toEqual([false, false, true]);
    const above = bandPull(band({ way: 'single' }, 2.6, { curves }), [], 0.5, 2.5);
    expect([1.6, 1.41, 1.39].map(above.extrapolated)).toEqual([false, false, true]);
    const slack = bandPull(
      band({ way: 'single' }, 0, { curves: { loading: readUpTo(0.5), unloading: readUpTo(0.5) } }),
      [],
      0.5,
      2,
    );
    expect(slack.extrapolated(1)).toBe(false);
  });
});

const kinks = ({ breaksM }: HungPull) => [...new Set(breaksM.map((zM) => zM.toFixed(6)))].toSorted();

describe('a band read on a scale in its hookup', () => {
  it('is a straight line through two readings, and beyond them', () => {
    const pull = hungPull(
      {
        verticalAt: [
          { zM: 0.8, forceN: 100 },
          { zM: 1.4, forceN: 400 },
        ],
        count: 2,
      },
      0.5,
      1.8,
    );
    expect([0.7, 1.1, 1.6].map(pull.downN)).toEqual([100, 500, 1000].map((n) => expect.closeTo(n, 9)));
  });

  it('never pulls down where all readings pull up', () => {
    const verticalAt = [
      { zM: 0.8, forceN: -100 },
      { zM: 1.4, forceN: -10 },
    ];
    // The line through both reaches nought at 1.467 m.
    const pull = hungPull({ verticalAt, count: 1 }, 0.5, 2);
    expect([0.8, 1.4, 1.6].map(pull.downN)).toEqual([-100, -10, 0].map((n) => expect.closeTo(n, 9)));
    // Kinks are where it was read and where the line crosses nought, be it the run of one end or of both.
    expect(kinks(pull)).toEqual(['0.800000', '1.400000', '1.466667']);
    // Not where the last of them shows nothing either, while both ways it goes on straight.
    const from = (forceN: number) =>
      hungPull({ verticalAt: [verticalAt[0]!, { zM: 1.4, forceN }], count: 1 }, 0.8, 1.4);
    expect(from(0).downN(1.6)).toBe(0);
    expect(from(20).downN(1.6)).toBeCloseTo(60, 9);
    // A kink is between the ends of the way: here only where the line crosses nought.
    expect(kinks(from(20))).toEqual(['1.300000']);
    expect(kinks(from(-100))).toEqual([]);
  });

  it('is known as the scale shows it: 200 N to 3.6 N, and a pair to twice that', () => {
    // sqrt((0.015 x 200)^2 + 2^2) = sqrt(13); at 0 N only the 2 N that no scale shows are left.
    const verticalAt = [
      { zM: 0.8, forceN: 0 },
      { zM: 1.4, forceN: 200 },
    ];
    const pull = hungPull({ verticalAt, count: 2 }, 0.5, 2);
    expect(pull.downSdN(1.4)).toBeCloseTo(2 * Math.sqrt(13), 9);
    expect(pull.downSdN(0.8)).toBeCloseTo(4, 9);
  });

  it('never pulls up where all readings pull down', () => {
    const reading = fc.record({
      zM: fc.integer({ min: 40, max: 200 }),
      forceN: fc.integer({ min: 0, max: 900 }),
    });
    const readings = fc.uniqueArray(reading, { minLength: 2, maxLength: 6, selector: (r) => r.zM });
    fc.assert(
      fc.property(readings, fc.double({ min: 0, max: 2.5, noNaN: true }), (rows, zM) => {
        const verticalAt = rows.map((r) => ({ zM: r.zM / 100, forceN: r.forceN }));
        const pull = hungPull({ verticalAt, count: 1 }, 0, 2.6);
        expect(pull.downN(zM)).toBeGreaterThanOrEqual(0);
        for (const read of verticalAt) expect(pull.downN(read.zM)).toBeCloseTo(read.forceN, 9);
        // Where it goes slack there is a kink.
        for (let lowCm = 0; lowCm < 250; lowCm++) {
          const [low, high] = [lowCm / 100, (lowCm + 1) / 100];
          if ((pull.downN(low) === 0) !== (pull.downN(high) === 0))
            expect(pull.breaksM.filter((z) => z > low - 1e-9 && z < high + 1e-9)).not.toEqual([]);
        }
      }),
    );
  });
});

describe('a chain', () => {
  it('of 13 mm weighs what the standard prints', () => {
    // DIN 766, 13 x 36 mm: inside width 16 mm at least, 3.8 kg/m (dealer's reprint of the table).
    expect(chainMass({ wireM: 0.013, pitchM: 0.036, insideWidthM: 0.016 })).toBeCloseTo(3.8, 1);
  });

  const chain = { massPerMetreKg: 3.8, lengthM: 1.2, attachBelowBarM: 0.3, count: 2 };

  it('hangs by x = clamp(h - c, 0, L): nothing on the floor, all of it once the last link is up', () => {
    expect([0.2, 0.8, 1.5, 2].map((zM) => hangingKg(chain, zM))).toEqual(
      [0, 2 * 3.8 * 0.5, 2 * 3.8 * 1.2, 2 * 3.8 * 1.2].map((kg) => expect.closeTo(kg, 12)),
    );
  });

  it('picks up links only while some lie on the floor', () => {
    expect([0.2, 0.8, 1.6].map((zM) => liftedPerMetreKg(chain, zM))).toEqual([0, 7.6, 0]);
    expect(chainBreaksM(chain)).toEqual([0.3, 1.5]);
  });
});

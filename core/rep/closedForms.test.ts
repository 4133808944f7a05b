import { describe, expect, it } from 'vitest';
import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '../load/localGravity.ts';
import type { Capability } from './Capability.ts';
import { limitStrengthN } from './expectedSpeed.ts';
import { fitStrength } from './fitStrength.ts';
import { maxBar } from './maxBar.ts';
import { simulateRep } from './simulateRep.ts';
import { evenCapability } from './tests/capabilities.ts';

// Closed forms of elementary mechanics; tolerance from docs/model.md: 1e-6.
const G = STANDARD_GRAVITY_MPS2;
const load: Load = {
  barKg: 150,
  bands: [],
  hungBands: [],
  chains: [],
  bottomM: 0.9,
  lockoutM: 1.5,
  gravityMps2: G,
  path: [],
};
const steady: Capability = {
  ...evenCapability,
  strengthN: 2600,
  maxSpeedMps: 1e12,
  strainAfterS: 1e6,
  movedBodyKg: 60,
  range: { fromM: 0.9, toM: 1.5 },
};
const rangeM = 0.6;
const massKg = 210;
/** Where the push is eased, the way left counts to 2 mm beyond lockout. */
const leftM = (zM: number) => 1.5 + 0.002 - zM;

/** The heaviest bar of who pushes just what holds so much. */
const most = (holdsKg: number) => maxBar(load, { ...steady, movedBodyKg: 0, strengthN: holdsKg * G });
/** A rep whose constant force would bring the bar up in so long. */
const takes = (durationS: number) =>
  simulateRep(load, { ...steady, strengthN: massKg * (G + (2 * rangeM) / durationS ** 2) });

describe('a rep agrees with the closed form', () => {
  it('of a constant force: the height is a parabola in time', () => {
    const accelerationMps2 = steady.strengthN / massKg - G;
    const rep = simulateRep(load, steady);
    expect(rep.durationS / Math.sqrt((2 * rangeM) / accelerationMps2)).toBeCloseTo(1, 7);
    expect(rep.peakSpeedMps / Math.sqrt(2 * rangeM * accelerationMps2)).toBeCloseTo(1, 7);
    // The mean is half the end speed.
    expect(rep.meanSpeedMps / Math.sqrt((rangeM * accelerationMps2) / 2)).toBeCloseTo(1, 7);
    // Faster all the way up, it is nowhere slower than at lockout once it is under way.
    expect(rep.slowest).toEqual({ s: 1, zM: 1.5, speedMps: rep.peakSpeedMps });
    expect(rep.samples).toEqual([]);
  });

  it('of a constant load and a linear force-velocity line: the speed nears its limit exponentially', () => {
    const maxSpeedMps = 1.2;
    const rate = steady.strengthN / (massKg * maxSpeedMps);
    const limitMps = maxSpeedMps * (1 - (massKg * G) / steady.strengthN);
    const { durationS, samples } = simulateRep(load, { ...steady, maxSpeedMps }, { samples: 41 });
    expect((limitMps * (durationS - (1 - Math.exp(-rate * durationS)) / rate)) / rangeM).toBeCloseTo(1, 7);
    for (const { tS, speedMps } of samples) {
      expect(speedMps).toBeCloseTo(limitMps * (1 - Math.exp(-rate * tS)), 6);
    }
  });

  it('of a load that rises linearly: the bar swings like a spring', () => {
    const springNpm = 500;
    const hungBands = [
      {
        verticalAt: [
          { zM: 0.9, forceN: 100 },
          { zM: 1.5, forceN: 100 + 0.6 * springNpm },
        ],
        count: 1,
      },
    ];
    const amplitudeM = (steady.strengthN - massKg * G - 100) / springNpm;
    const omega = Math.sqrt(springNpm / massKg);
    const rep = simulateRep({ ...load, hungBands }, steady);
    expect((rep.durationS * omega) / Math.acos(1 - rangeM / amplitudeM)).toBeCloseTo(1, 7);
  });

  it('of a spring too stiff to lock out: the bar stops at twice the amplitude', () => {
    const springNpm = 3000;
    const hungBands = [
      {
        verticalAt: [
          { zM: 0.9, forceN: 0 },
          { zM: 1.5, forceN: 0.6 * springNpm },
        ],
        count: 1,
      },
    ];
    const amplitudeM = (steady.strengthN - massKg * G) / springNpm;
    const rep = simulateRep({ ...load, hungBands }, steady);
    expect(rep.made).toBe(false);
    expect((rep.stoppedAt!.zM - 0.9) / (2 * amplitudeM)).toBeCloseTo(1, 7);
    expect((rep.stoppedAt!.tS * Math.sqrt(springNpm / massKg)) / Math.PI).toBeCloseTo(1, 7);
    expect(rep.slowest).toEqual({ s: rep.stoppedAt!.s, zM: rep.stoppedAt!.zM, speedMps: 0 });
  });

  it('of a push that builds up to a constant force: the speed lags by what the build-up took', () => {
    const [buildUpTimeS, builtShare] = [0.15, 0.3];
    const accelerationMps2 = steady.strengthN / massKg - G;
    const { durationS, samples } = simulateRep(
      load,
      { ...steady, buildUpTimeS, builtShare },
      { samples: 41 },
    );
    const lagS = (tS: number) => (1 - builtShare) * buildUpTimeS * (1 - Math.exp(-tS / buildUpTimeS));
    for (const { tS, speedMps } of samples)
      expect(speedMps).toBeCloseTo(accelerationMps2 * (tS - lagS(tS)), 6);
    const t = durationS;
    const climbedM =
      accelerationMps2 * (t * t * 0.5 - (1 - builtShare) * buildUpTimeS * t + buildUpTimeS * lagS(t));
    expect(climbedM / rangeM).toBeCloseTo(1, 6);
  });

  it('of a constant force that is eased: the square of the speed over the way left follows a Riccati equation', () => {
    // y = v^2 over the way left d obeys dy/dd = -2 A + c y^2 / (2 g d^2); with y = w d the variables part, and
    // (w1 - w) / (w - w2) = -(w1 / w2) (d / D)^k, where w1, w2 = (1 +- k) g / c and k = sqrt(1 + 4 A c / g).
    const easing = 1.4;
    const accelerationMps2 = steady.strengthN / massKg - G;
    const k = Math.sqrt(1 + (4 * accelerationMps2 * easing) / G);
    const [w1, w2] = [((1 + k) * G) / easing, ((1 - k) * G) / easing];
    const { samples } = simulateRep(load, { ...steady, easing }, { samples: 60 });
    for (const { zM, speedMps } of samples) {
      const ratio = -(w1 / w2) * (leftM(zM) / leftM(0.9)) ** k;
      const w = (w1 + ratio * w2) / (1 + ratio);
      expect(speedMps).toBeCloseTo(Math.sqrt(Math.max(0, w * leftM(zM))), 4);
    }
    expect(samples.at(-1)!.speedMps).toBeLessThan(
      0.2 * Math.max(...samples.map((sample) => sample.speedMps)),
    );
  });

  // Of what is held exactly nothing goes up within the time that anybody can strain: a hundred-thousandth is left for the way.
  const FOR_THE_WAY = 1e-5;

  it('of a constant force: the heaviest bar is what it holds, from half a kilogram to ten tonnes, to 5 g on the safe side', () => {
    for (const holdsKg of [0.6, 3, 47.1, 102.3, 208.8, 390.2]) {
      expect(most(holdsKg)!.barKg).toBeLessThan(holdsKg);
      expect(most(holdsKg)!.barKg).toBeGreaterThan(holdsKg * (1 - FOR_THE_WAY) - 0.005);
    }
    expect([0.45, 0.7, 9_900, 12_000].map((holdsKg) => most(holdsKg) !== null)).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  it('of a constant force: the strength of a maximum is its weight, up to a hundred tonnes', () => {
    const own = { ...steady, movedBodyKg: 0, strengthN: 1 };
    for (const barKg of [0.05, 150, 99_000]) {
      const over = fitStrength({ ...load, barKg }, own) / (barKg * G) - 1;
      expect(over).toBeGreaterThan(0);
      expect(over).toBeLessThan(FOR_THE_WAY + 1e-6);
      expect(limitStrengthN(compileLoad({ ...load, barKg }), own)! / (barKg * G)).toBeCloseTo(1, 3);
    }
    const tooHeavy = { ...load, barKg: 105_000 };
    expect(() => fitStrength(tooHeavy, own)).toThrow(/^no strength/);
    expect(limitStrengthN(compileLoad(tooHeavy), own)).toBeNull();
  });

  it('of a constant force that declines from an instant on: the speed loses what the decline took', () => {
    const declining = { ...steady, strainAfterS: 0.35, strainTimeS: 2 };
    const { samples } = simulateRep(load, declining, { samples: 41 });
    const fullMps2 = steady.strengthN / massKg;
    for (const { tS, zM, speedMps } of samples) {
      const u = Math.max(0, tS - 0.35);
      const pushedMps = fullMps2 * (tS - u + 2 * (1 - Math.exp(-u / 2)));
      expect(speedMps).toBeCloseTo(pushedMps - G * tS, 8);
      const pushedM = fullMps2 * ((tS * tS - u * u) / 2 + 2 * u - 4 * (1 - Math.exp(-u / 2)));
      expect(zM - 0.9).toBeCloseTo(pushedM - (G * tS * tS) / 2, 8);
    }
  });

  it('of a push that rises beyond all bounds past lockout: steps that lead there are made again, shorter', () => {
    // m v^2 / 2 is the integral of S exp(0.4 s^2), a power series in s.
    const thrown = { ...steady, movedBodyKg: 0, strengthN: 1e6, curvature: 0.4 };
    const integral = 1 + 0.4 / 3 + 0.4 ** 2 / 10 + 0.4 ** 3 / 42 + 0.4 ** 4 / 216 + 0.4 ** 5 / 1320;
    const speedMps = Math.sqrt(2 * rangeM * (1e6 * integral - G));
    expect(simulateRep({ ...load, barKg: 1 }, thrown).peakSpeedMps / speedMps).toBeCloseTo(1, 5);
  });

  it('of a constant force that takes 110 s is made; one that would take 130 s or 150 s is longer than anybody strains', () => {
    expect(takes(110)).toMatchObject({ made: true, durationS: expect.closeTo(110, 5) });
    for (const longS of [130, 150])
      expect(takes(longS)).toMatchObject({ made: false, durationS: expect.closeTo(120, 9) });
  });

  // 265 kg are held: 210 kg with 60 kg of band or of chain at the bottom are not, and just the weight does not move.
  it.each([
    ['that cannot be held', { barKg: 250 }, 2600],
    ['just held', {}, massKg * G],
    [
      'held down by a band',
      { hungBands: [{ verticalAt: [0.9, 1.5].map((zM) => ({ zM, forceN: 60 * G })), count: 1 }] },
      2600,
    ],
    [
      'with chain that hangs from the start',
      { chains: [{ massPerMetreKg: 100 / 3, lengthM: 2, attachBelowBarM: 0, count: 2 }] },
      2600,
    ],
  ])('of a weight %s: nothing moves', (_, change, strengthN) => {
    const rep = simulateRep({ ...load, ...change }, { ...steady, strengthN, buildUpTimeS: 0.1 });
    expect(rep).toMatchObject({ made: false, durationS: 0, meanSpeedMps: 0, stoppedAt: { s: 0, tS: 0 } });
  });
});

import { describe, expect, it } from 'vitest';
import type { Load } from '../load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '../load/localGravity.ts';
import type { Capability } from './Capability.ts';
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

  it('of a weight that cannot be held: nothing moves', () => {
    const rep = simulateRep({ ...load, barKg: 250 }, steady);
    expect(rep).toMatchObject({ made: false, durationS: 0, meanSpeedMps: 0, stoppedAt: { s: 0, tS: 0 } });
  });
});

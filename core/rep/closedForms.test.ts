import { describe, expect, it } from 'vitest';
import type { Load } from '../load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '../load/localGravity.ts';
import type { Capability } from './Capability.ts';
import { simulateRep } from './simulateRep.ts';

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
  strengthN: 2600,
  slope: 0,
  curvature: 0,
  dip: { depth: 0, at: 0.4, width: 0.2 },
  maxSpeedMps: 1e12,
  rebound: 0,
  reboundTimeS: 0.7,
  strainAfterS: 1e6,
  strainTimeS: 6,
  movedBodyKg: 60,
  range: { fromM: 0.9, toM: 1.5 },
};
const rangeM = 0.6;
const massKg = 210;

describe('a rep agrees with the closed form', () => {
  it('of a constant force: the height is a parabola in time', () => {
    const accelerationMps2 = steady.strengthN / massKg - G;
    const rep = simulateRep(load, steady);
    expect(rep.durationS / Math.sqrt((2 * rangeM) / accelerationMps2)).toBeCloseTo(1, 7);
    expect(rep.peakSpeedMps / Math.sqrt(2 * rangeM * accelerationMps2)).toBeCloseTo(1, 7);
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
  });

  it('of a weight that cannot be held: nothing moves', () => {
    const rep = simulateRep({ ...load, barKg: 250 }, steady);
    expect(rep).toMatchObject({ made: false, durationS: 0, meanSpeedMps: 0, stoppedAt: { s: 0, tS: 0 } });
  });
});

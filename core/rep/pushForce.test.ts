import { expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import type { Capability } from './Capability.ts';
import { accelerationFunction } from './pushForce.ts';
import { evenCapability } from './tests/capabilities.ts';

const G = 9.80665;
const MASS_KG = 210;
const lifter: Capability = {
  ...evenCapability,
  strengthN: 2600,
  maxSpeedMps: 1e12,
  strainAfterS: 1e6,
  movedBodyKg: 60,
  range: { fromM: 0.9, toM: 1.5 },
};

it.each([
  [0.05, 0.1, 1.4],
  [0.2, 0.2, 0.7],
  [1, 1, 1.4],
])(
  'with %d of its weight left by bands from above a bar is braked as by %d of it, times %d',
  (left, braked, easing) => {
    const forceN = -(1 - left) * MASS_KG * G;
    const verticalAt = [0.9, 1.5].map((zM) => ({ zM, forceN }));
    const load = { ...bareLoad(0.9, 1.5), barKg: 150, hungBands: [{ verticalAt, count: 1 }] };
    const accelerationMps2 = accelerationFunction(compileLoad(load), { ...lifter, easing })(0, 1.4, 1);
    // M dv/dt = F - L - easing M r^2 / (L / M) with r = v^2 / (2 (d + 2 mm)), L / M no less than a tenth of g (docs/model.md, "rep").
    const r = 1 / (2 * (0.1 + 0.002));
    expect(accelerationMps2).toBeCloseTo(2600 / MASS_KG - left * G - (easing * r ** 2) / (braked * G), 6);
  },
);

it.each([0.35, 1])(
  'accelerates all that moves by what is pushed beyond the load, a rebound of %d in it, less what picking up chain takes',
  (rebound) => {
    const chain = { massPerMetreKg: 5, lengthM: 2, attachBelowBarM: 0.4, count: 2 };
    const load = { ...bareLoad(0.9, 1.5), barKg: 150, chains: [chain] };
    const shaped: Capability = {
      ...lifter,
      slope: 1.2,
      curvature: -0.5,
      dip: { depth: 0.2, at: 0.4, width: 0.2 },
      rebound,
      reboundTimeS: 0.7,
      maxSpeedMps: 1.6,
      strainAfterS: 2.5,
      strainTimeS: 6,
    };
    // F = S g(s) r(v) a(t), halfway up: 0.8 m of the chains off the floor (docs/model.md, "rep").
    const curve = Math.exp(0.6 - 0.125 - 0.2 * (Math.exp(-(0.5 ** 2)) - Math.exp(-4)));
    const forceN = (tS: number) =>
      2600 *
      curve *
      (1 - 0.4 / 1.6) *
      (1 + rebound * Math.exp(-tS / 0.7)) *
      (tS > 2.5 ? Math.exp(-(tS - 2.5) / 6) : 1);
    const movedKg = MASS_KG + 2 * 5 * 0.8;
    const acceleration = accelerationFunction(compileLoad(load), shaped);
    for (const tS of [0.3, 2.4, 4])
      expect(acceleration(tS, 1.2, 0.4)).toBeCloseTo((forceN(tS) - movedKg * G - 10 * 0.4 ** 2) / movedKg, 9);
  },
);

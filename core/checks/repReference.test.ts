import { describe, expect, it } from 'vitest';
import type { BandCurve } from '../band/BandCurve.ts';
import type { Load } from '../load/Load.ts';
import { STANDARD_GRAVITY_MPS2 } from '../load/localGravity.ts';
import type { Capability } from '../rep/Capability.ts';
import { fitStrength } from '../rep/fitStrength.ts';
import { maxBar } from '../rep/maxBar.ts';
import { simulateRep } from '../rep/simulateRep.ts';
import reference from './reference/reps.json' with { type: 'json' };

const curve: BandCurve = {
  model: 'mooneyRivlin',
  parameters: [150, 70],
  parameterNames: ['c1N', 'c2N'],
  covariance: [
    [0, 0],
    [0, 0],
  ],
  restLengthM: 1.04,
  measuredToM: 2.6,
  known: 'measured',
  direction: 'loading',
  residualScale: 1,
  degreesOfFreedom: 8,
};
const curves = { loading: curve, unloading: curve };
const range = { fromM: 0.9, toM: 1.5 };

type Case = (typeof reference.values)[keyof typeof reference.values];

function loadOf(row: Case): Load {
  const low = { curves, hookup: { way: 'doubled' as const }, anchor: { xM: 0.08, yM: 0.05, zM: 0.1 } };
  const above = { curves, hookup: { way: 'single' as const }, anchor: { xM: 0, yM: 0, zM: 2.7 } };
  return {
    barKg: row.barKg,
    bands: [
      ...(row.lowBands > 0 ? [{ ...low, count: row.lowBands }] : []),
      ...(row.bandsAbove > 0 ? [{ ...above, count: row.bandsAbove }] : []),
    ],
    hungBands: [],
    chains:
      row.chains > 0 ? [{ massPerMetreKg: 3.8, lengthM: 1.2, attachBelowBarM: 0.1, count: row.chains }] : [],
    bottomM: range.fromM,
    lockoutM: range.toM,
    gravityMps2: STANDARD_GRAVITY_MPS2,
    path: row.bentPath
      ? [
          { zM: 0.9, xM: -0.05 },
          { zM: 1.2, xM: 0.02 },
          { zM: 1.6, xM: 0 },
        ]
      : [],
  };
}

function capabilityOf(row: Case): Capability {
  return {
    strengthN: row.strengthN,
    slope: 1.2,
    curvature: -0.5,
    dip: { depth: row.dipDepth, at: 0.4, width: 0.2 },
    maxSpeedMps: 1.6,
    rebound: row.rebound,
    reboundTimeS: 0.7,
    strainAfterS: 2.5,
    strainTimeS: 6,
    buildUpTimeS: row.buildUpTimeS,
    builtShare: row.builtShare,
    easing: row.easing,
    movedBodyKg: 88,
    range,
  };
}

describe.each(Object.entries(reference.values))('against SciPy: %s', (_, row) => {
  it('the rep ends at the same time and height', () => {
    const rep = simulateRep(loadOf(row), capabilityOf(row));
    expect(rep.made).toBe(row.made);
    expect(Math.abs(rep.durationS / row.durationS - 1)).toBeLessThan(1e-5);
    expect(rep.stoppedAt?.zM ?? range.toM).toBeCloseTo(row.endM, 6);
  });

  it('the heaviest bar is the same to 0.01 kg, and gives the strength back', () => {
    const load = loadOf(row);
    const capability = capabilityOf(row);
    expect(Math.abs(maxBar(load, capability)!.barKg - row.maxBarKg)).toBeLessThan(0.01);
    const strengthN = fitStrength({ ...load, barKg: row.maxBarKg }, capability);
    expect(Math.abs(strengthN / row.strengthN - 1)).toBeLessThan(1e-4);
  });
});

import { describe, expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { accelerationFunction } from '../rep/pushForce.ts';
import { lifterCapability } from './lifterCapability.ts';
import type { Lift } from './populationShape.ts';

/** The starting shapes of docs/model.md, "rep", column by column. */
interface Column {
  slope: number;
  curvature: number;
  dip: [depth: number, at: number, width: number];
  v0: number;
  rebound: number;
  strain: [from: number, tau: number];
  built: number;
  phi: number;
}
const columns: Record<Lift, Column> = {
  squat: {
    slope: 1.25,
    curvature: -0.4,
    dip: [0.2, 0.4, 0.2],
    v0: 2.8,
    rebound: 0.55,
    strain: [2.5, 6],
    built: 1,
    phi: 0.88,
  },
  bench: {
    slope: 0.66,
    curvature: -0.46,
    dip: [0.14, 0.4, 0.2],
    v0: 3.5,
    rebound: 0.26,
    strain: [3, 6],
    built: 1,
    phi: 0,
  },
  deadlift: {
    slope: 0.5,
    curvature: -0.1,
    dip: [0.135, 0.45, 0.25],
    v0: 3,
    rebound: 0,
    strain: [3, 6],
    built: 0,
    phi: 0.4,
  },
};

const G = 9.80665;
const range = { fromM: 0.4, toM: 1 };
const load = { ...bareLoad(range.fromM, range.toM), barKg: 150 };
const BODY_KG = 90;

describe.each(['squat', 'bench', 'deadlift'] as const)('a lifter whose shape nobody measured: %s', (lift) => {
  it('pushes as the equations and the table of the model say, at every place, speed and time', () => {
    const { slope, curvature, dip, v0, rebound, strain, built, phi } = columns[lift];
    // Off a pause, which leaves 0.44 of the rebound and of what the push has built up.
    const today = { start: 'paused' as const, range, bodyMassKg: BODY_KG };
    const { capability } = lifterCapability(lift, today, { ...today, load, yearsAgo: 0 });
    const acceleration = accelerationFunction(compileLoad(load), capability);
    const massKg = 150 + phi * BODY_KG;
    const [depth, at, width] = dip;
    const bump = (s: number) => Math.exp(-(((s - at) / width) ** 2));
    for (const [s, v, t] of [
      [0, 0, 0.02],
      [0.2, 0.3, 0.1],
      [0.45, 0.2, 1],
      [0.7, 0.8, 0.4],
      [0.95, 0.5, 4],
    ] as const) {
      const g = Math.exp(slope * s + curvature * s ** 2 - depth * (bump(s) - bump(0)));
      const fade = t > strain[0] ? Math.exp(-(t - strain[0]) / strain[1]) : 1;
      const full = capability.strengthN * g * (1 - v / v0) * (1 + 0.44 * rebound * Math.exp(-t / 0.3)) * fade;
      const share = 1 - (1 - 0.44 * built) * Math.exp(-t / 0.08);
      const r = v ** 2 / (2 * (0.6 * (1 - s) + 0.002));
      const expected = share * (full / massKg - G) - (1.4 * r ** 2) / G;
      expect(acceleration(t, 0.4 + 0.6 * s, v)).toBeCloseTo(expected, 9);
    }
  });
});

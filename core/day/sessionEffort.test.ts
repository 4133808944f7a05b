import { describe, expect, it } from 'vitest';
import { tiringOf } from '#core/effort/Tiring.ts';
import { sessionEffort } from './sessionEffort.ts';

const task = {
  capability: {
    strengthN: 4000,
    slope: 1,
    curvature: 0,
    dip: { depth: 0, at: 0.4, width: 0.2 },
    maxSpeedMps: 1.6,
    rebound: 0,
    reboundTimeS: 0.7,
    strainAfterS: 2.5,
    strainTimeS: 6,
    buildUpTimeS: 0,
    builtShare: 0,
    easing: 0,
    movedBodyKg: 0,
    range: { fromM: 0.8, toM: 1.6 },
  },
  travel: { bottomM: 0.8, lockoutM: 1.6, gravityMps2: 9.80665, path: [] },
};
const gear = { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [] };

/** What a shorter rest between sets of three would make of it. */
const shorter = (restS: number, sets = 2) =>
  sessionEffort(task, tiringOf('squat'), gear, { hookups: [], chainPairs: [] }, [
    { barKg: 250, sets, reps: 3, restS },
  ])![0]!.shorterRest;

describe('a shorter rest', () => {
  it('is half a minute less, and never below a quarter of a minute', () => {
    // Common practice, no source: nobody times a rest closer, and less than 15 s is no rest between sets.
    expect(shorter(120)).toMatchObject({ restS: 90 });
    expect(shorter(45)).toMatchObject({ restS: 15 });
    expect(shorter(44)).toBeNull();
    expect(shorter(120, 1)).toBeNull();
  });

  it('leaves less to spare the shorter it was', () => {
    expect(shorter(60)!.marginLn).toBeLessThan(shorter(120)!.marginLn);
  });
});

import { describe, expect, it } from 'vitest';
import { tiringOf } from '#core/effort/Tiring.ts';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { sessionEffort } from './sessionEffort.ts';

const task = {
  capability: { ...evenCapability, strengthN: 4000, slope: 1, range: { fromM: 0.8, toM: 1.6 } },
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

describe('a bar that takes longer than anybody can strain', () => {
  it('leaves nothing to be said of the day', () => {
    // 0.8 m at 1.6 m/s take half a second; each 0.02 s of straining leaves 1 / e of the push, so e^-20 of it: of 1e6 N nothing.
    const capability = { ...task.capability, strainAfterS: 0.1, strainTimeS: 0.02 };
    const slow = { ...task, capability };
    const blocks = [{ barKg: 100, sets: 1, reps: 1, restS: 120 }];
    expect(sessionEffort(slow, tiringOf('squat'), gear, { hookups: [], chainPairs: [] }, blocks)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import type { SetupRanking } from '#core/day/SetupRanking.ts';
import { squatCapability } from '#core/rep/tests/capabilities.ts';
import { outsideZone } from './outsideZone.ts';
import type { PlannedWork } from './plannedWork.ts';

const records = twoLifters();
const [group] = records.day[0]!.groups;
/** Loads 20, 40 and 60 kg; the club allows no bar below 0.4 of the maximum of 100 kg. */
const gear = { barKg: 20, collarsKg: 0, discs: [{ massKg: 10, pairs: 2 }], hookups: [], chains: [] };
const travel = { bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };

/** What is said of a bar told at `mps` where the zone is 0.5 to 0.6 m/s. */
function said(mps: number, barKg: number, { askedKg = barKg, byHand = false, toMps = 0.6, ownKg = 60 } = {}) {
  const aim = { by: 'speed' as const, fromMps: 0.5, toMps };
  const task = { capability: squatCapability, travel, aim, referenceKg: 100 };
  const zone = { of: 'firstRep', fromMps: 0.5, toMps, mps, chance: 0.5 };
  const blocks = [{ loaded: { loadedKg: barKg }, expected: { zone } }, { expected: { zone: null } }];
  const done = { barKg, blocks } as unknown as PlannedWork;
  // Alone this lifter would have nothing hung and `ownKg` on the bar.
  const ranked: Partial<SetupRanking> = {
    sets: [{ hookups: [], chainPairs: [] }],
    fromBest: () => () => ({ index: 0, barKg: ownKg, misfit: 0 }),
  };
  const asked = { barKg: askedKg, referenceKg: 100, byHand };
  return outsideZone(records, group!, { task }, { gear }, ranked as SetupRanking, done, asked);
}
const why = (...given: Parameters<typeof said>) => said(...given)?.why ?? null;

describe('a told speed outside of its zone', () => {
  it('is one by the digits that are shown', () => {
    expect([0.496, 0.55, 0.604].map((mps) => why(mps, 40))).toEqual([null, null, null]);
    expect(said(0.494, 60)).toEqual({
      code: 'outsideZone',
      mps: 0.494,
      fromMps: 0.5,
      toMps: 0.6,
      why: 'balance',
    });
    expect(why(0.606, 40)).toBe('balance');
  });

  it('is put down to the coach where bar or bands are set by hand', () => {
    expect([why(0.3, 40, { byHand: true }), why(0.9, 60, { byHand: true })]).toEqual(['byHand', 'byHand']);
  });

  it('is too fast because the bar was made lighter, or because no heavier one can be loaded', () => {
    expect(why(0.9, 40, { askedKg: 60 })).toBe('madeLighter');
    expect(why(0.9, 60)).toBe('heaviestBar');
    // A bar that was made lighter is not slow for that.
    expect(why(0.3, 60, { askedKg: 80 })).toBe('balance');
  });

  it('is too slow because no lighter bar is allowed, or because of bands that serve the whole rack', () => {
    expect(why(0.3, 40)).toBe('lightestBar');
    expect(why(0.3, 60)).toBe('balance');
    // A squat of 60 kg by a lifter of some 300 is faster than 0.6 m/s, and slower than 3.
    expect(why(0.3, 40, { toMps: 3 })).toBe('sharedBands');
    // A bar that does not go up meets no zone.
    expect(why(0.3, 40, { toMps: 3, ownKg: 500 })).toBe('lightestBar');
  });
});

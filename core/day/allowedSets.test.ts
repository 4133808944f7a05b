import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import type { RackGear } from './Gear.ts';
import { prescribe } from './prescribe.ts';
import { rankSetups } from './rankSetups.ts';

// The starting values of a squat in docs/model.md; strength for a maximum of some 300 kg.
const capability = {
  strengthN: 3600,
  slope: 1.2,
  curvature: -0.5,
  dip: { depth: 0.2, at: 0.4, width: 0.2 },
  maxSpeedMps: 1.6,
  rebound: 0.35,
  reboundTimeS: 0.7,
  strainAfterS: 2.5,
  strainTimeS: 6,
  movedBodyKg: 88,
  range: { fromM: 0.9, toM: 1.5 },
};
const travel = { bottomM: 0.9, lockoutM: 1.5, gravityMps2: 9.80665, path: [] };
const RATED_N = 600;
const SAFE_STRETCH = 2.5;

/** Made-up stocks of unread bands on two kinds of pegs: some slack all the way, some stretched far, some strong. */
const stocks = fc
  .array(
    fc.record({
      widthMm: fc.constantFrom(13, 22, 29, 44, 64),
      restLengthM: fc.double({ min: 0.4, max: 1.8, noNaN: true }),
      low: fc.boolean(),
      doubled: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map(
    (bands): RackGear => ({
      barKg: 20,
      collarsKg: 0,
      discs: [25, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 4 })),
      chains: [],
      hookups: bands.map(({ widthMm, restLengthM, low, doubled }, i) => ({
        pairId: `p${i}`,
        hookupId: 'h',
        anchorId: low ? 'low' : 'high',
        ratedLoadN: RATED_N,
        rigged: [
          {
            curves: fitBand({ restLengthM, widthMm, readings: [] }),
            hookup: { way: doubled ? 'doubled' : 'single' },
            anchor: { xM: 0, yM: 0.1, zM: low ? 0.05 : 0.5 },
            count: 2,
          },
        ],
        measured: null,
      })),
    }),
  );

describe('what may be proposed', () => {
  it('never stretches a band too far, never overloads an anchor by all its bands together, never hangs a slack pair', () => {
    fc.assert(
      fc.property(stocks, fc.double({ min: 0.4, max: 1.2, noNaN: true }), (gear, share) => {
        const aim = { by: 'capability' as const, bottomShare: share, lockoutShare: share };
        const task = { capability, travel, aim, referenceKg: 300 };
        const { best, runnersUp } = prescribe(task, gear, { rules: { safeStretch: SAFE_STRETCH } });
        for (const { set } of [best, ...runnersUp]) {
          const onAnchor = new Map<string, number>();
          for (const index of set.hookups) {
            const { rigged, anchorId } = gear.hookups[index]!;
            const pull = bandPull(rigged[0]!, [], travel.bottomM, travel.lockoutM);
            expect(pull.stretch(travel.lockoutM)).toBeLessThanOrEqual(SAFE_STRETCH);
            expect(pull.downN(travel.lockoutM)).toBeGreaterThan(0);
            onAnchor.set(anchorId, (onAnchor.get(anchorId) ?? 0) + pull.anchorN(travel.lockoutM));
          }
          for (const pullN of onAnchor.values()) expect(pullN).toBeLessThanOrEqual(RATED_N);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps each of two pairs that an anchor holds alone, and not both where together they are too much', () => {
    const read = (forceN: number) => ({
      count: 2,
      verticalAt: [
        { zM: 0.9, forceN: 0 },
        { zM: 1.5, forceN },
      ],
    });
    // One point carries half of what a pair pulls: 400 and 300 N on pegs for 600.
    const gear = (ratedLoadN: number): RackGear => ({
      barKg: 20,
      collarsKg: 0,
      discs: [],
      chains: [],
      hookups: [400, 300].map((forceN, i) => ({
        pairId: `p${i}`,
        hookupId: 'h',
        anchorId: 'low',
        ratedLoadN,
        rigged: [],
        measured: read(forceN),
      })),
    });
    const aim = { by: 'percent' as const, targets: [{ basis: 'lockout' as const, share: 0.5 }] };
    const task = { capability, travel, aim, referenceKg: 300 };
    const sets = (ratedLoadN: number) =>
      rankSetups(task, gear(ratedLoadN)).sets.map(({ hookups }) => hookups.join('+'));
    expect(sets(699)).toEqual(['', '0', '1']);
    expect(sets(700)).toEqual(['', '0', '1', '0+1']);
    expect(sets(399)).toEqual(['', '1']);
  });
});

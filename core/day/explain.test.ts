import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandCurves } from '#core/band/BandCurve.ts';
import { bandTension } from '#core/band/bandTension.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { explain } from './explain.ts';
import type { RackGear } from './Gear.ts';

const G = 9.80665;
/** Invented readings of one loop of 1 m: 200, 330 and 430 N at 1.4, 1.8 and 2.2 m. */
const curves = fitBand({
  restLengthM: 1,
  readings: [
    { lengthM: 1.4, forceN: 200, direction: 'loading' },
    { lengthM: 1.8, forceN: 330, direction: 'loading' },
    { lengthM: 2.2, forceN: 430, direction: 'loading' },
  ],
});
const capability = { ...evenCapability, strengthN: 4000, slope: 1, range: { fromM: 0.8, toM: 1.6 } };
const task = {
  capability,
  travel: { bottomM: 0.8, lockoutM: 1.6, gravityMps2: G, path: [] },
  referenceKg: 250,
};
const limits = { safeStretch: 2.5, mismatchShare: 0.05 };

function gearWith(ratedLoadN: number | null, xM = 0): RackGear {
  const placed = { curves, hookup: { way: 'single' as const }, anchor: { xM, yM: 0, zM: 0 }, count: 2 };
  const pair = { pairId: 'p', hookupId: 'h', anchorId: 'a', ratedLoadN, rigged: [placed], measured: null };
  return { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [pair] };
}
const hung = { hookups: [0], chainPairs: [] };
const codes = (cautions: readonly { code: string }[]) => cautions.map(({ code }) => code);

const width = ({ low95N, high95N }: { low95N: number; high95N: number }) => high95N - low95N;

const readings = [1.4, 1.8, 2.2];
const loop = (restLengthM: number, stiffer: number) =>
  fitBand({
    restLengthM,
    readings: readings.map((ratio) => ({
      lengthM: ratio * restLengthM,
      forceN: 300 * stiffer * (ratio - ratio ** -2),
      direction: 'loading',
    })),
  });
const uneven = (a: BandCurves, b: BandCurves, lockoutM: number) => {
  const gear = gearWith(4000);
  const [band] = gear.hookups[0]!.rigged;
  const rigged = [a, b].map((curves) => ({ ...band!, curves, count: 1 }));
  const hookups = [{ ...gear.hookups[0]!, rigged }];
  const short = { ...task, travel: { ...task.travel, lockoutM } };
  const { cautions } = explain(short, { ...gear, hookups }, hung, 100, limits);
  return cautions.find(({ code }) => code === 'pairMismatch');
};

// Common practice, no source. Nothing but the bar: 4000 N can be held at the bottom, more above it.
const round = { ...task, travel: { ...task.travel, gravityMps2: 10 } };
const atShare = (share: number) =>
  codes(explain(round, gearWith(null), { ...hung, hookups: [] }, share * 400, limits).cautions);

const hungFrom = (zM: number, xM = 0) => {
  const gear = gearWith(4000);
  const [band] = gear.hookups[0]!.rigged;
  const hookups = [{ ...gear.hookups[0]!, rigged: [{ ...band!, anchor: { xM, yM: 0, zM } }] }];
  return explain(task, { ...gear, hookups }, hung, 150, limits);
};

describe('explain', () => {
  it('adds up bar and bands right above the anchor, and counts each percentage on its own basis', () => {
    const found = explain(task, gearWith(null), hung, 100, limits);
    const lockoutBandN = 2 * bandTension(curves.loading, 1.6);
    expect(found.bottom.bandN).toBe(0);
    expect(found.lockout.bandN).toBeCloseTo(lockoutBandN, 9);
    expect(found.lockout.totalN).toBeCloseTo(100 * G + lockoutBandN, 9);
    const share = Object.fromEntries(found.percentages.map((one) => [one.basis, one.share]));
    expect(share['bar']).toBeCloseTo(0.4, 12);
    expect(share['bottom']).toBeCloseTo(0.4, 12);
    expect(share['lockout']).toBeCloseTo((100 * G + lockoutBandN) / (250 * G), 12);
    expect(share['mean']).toBeGreaterThan(0.4);
    // A bar is weighed: no doubt about its share.
    expect(found.percentages[0]).toEqual({ basis: 'bar', share: 0.4, low95: 0.4, high95: 0.4 });
    const atLockout = found.percentages.find(({ basis }) => basis === 'lockout')!;
    expect(atLockout.low95).toBeCloseTo(found.lockout.low95N / (250 * G), 12);
    expect(atLockout.high95).toBeCloseTo(found.lockout.high95N / (250 * G), 12);
    expect(found.shares.at(-1)!.share).toBeCloseTo((100 * G + lockoutBandN) / (4000 * Math.E), 12);
  });

  it('carries the uncertainty of the bands and none of the bar', () => {
    const { bottom, lockout } = explain(task, gearWith(null), hung, 100, limits);
    expect(bottom.high95N).toBe(bottom.low95N);
    expect(lockout.low95N).toBeLessThan(lockout.totalN);
    expect(lockout.high95N).toBeGreaterThan(lockout.totalN);
  });

  it('is less sure of a load whose heights are estimated, never surer, and alike where they are measured', () => {
    const sd = fc.double({ min: 0, max: 0.06, noNaN: true });
    fc.assert(
      fc.property(sd, sd, (bottomSdM, lockoutSdM) => {
        const measured = explain(task, gearWith(null), hung, 100, limits);
        const heightSpread = { bottomSdM, lockoutSdM };
        const guessed = explain({ ...task, heightSpread }, gearWith(null), hung, 100, limits);
        for (const end of ['bottom', 'mid', 'lockout', 'mean'] as const) {
          expect(guessed[end].totalN).toBe(measured[end].totalN);
          expect(width(guessed[end])).toBeGreaterThanOrEqual(width(measured[end]));
        }
        if (lockoutSdM > 0.001) expect(width(guessed.lockout)).toBeGreaterThan(width(measured.lockout));
        // The bar alone weighs the same at every height.
        const bare = explain(
          { ...task, heightSpread },
          gearWith(null),
          { ...hung, hookups: [] },
          100,
          limits,
        );
        expect(width(bare.lockout)).toBe(0);
      }),
      { numRuns: 30 },
    );
    const exact = { bottomSdM: 0, lockoutSdM: 0 };
    expect(explain({ ...task, heightSpread: exact }, gearWith(null), hung, 100, limits)).toEqual(
      explain(task, gearWith(null), hung, 100, limits),
    );
  });

  it('adds the spread of a chain by height as a closed form: mass per metre times the height', () => {
    const chain = { massPerMetreKg: 5, lengthM: 3, attachBelowBarM: 0, count: 2 };
    const gear: RackGear = { ...gearWith(null), chains: [{ chainPairId: 'c', chain, pairs: 1 }] };
    const heightSpread = { bottomSdM: 0.04, lockoutSdM: 0.02 };
    const { bottom, mid, lockout, mean } = explain(
      { ...task, heightSpread },
      gear,
      { hookups: [], chainPairs: [1] },
      100,
      limits,
    );
    // Two chains of 5 kg a metre hang on average 1.2 m down to the floor, and no band pulls beside them.
    expect(mean.chainN).toBeCloseTo(10 * G * 1.2, 6);
    for (const [at, heightM] of [
      [bottom, 0.8],
      [mid, 1.2],
      [lockout, 1.6],
    ] as const)
      expect(at.chainN).toBeCloseTo(10 * G * heightM, 9);
    expect(mean.bandN).toBeCloseTo(0, 6);
    // 1.96 standard deviations either side hold 95 % of the normal distribution.
    expect((bottom.high95N - bottom.low95N) / 2 / 1.96).toBeCloseTo(10 * G * 0.04, 2);
    expect((mid.high95N - mid.low95N) / 2 / 1.96).toBeCloseTo(10 * G * 0.03, 2);
    expect((lockout.high95N - lockout.low95N) / 2 / 1.96).toBeCloseTo(10 * G * 0.02, 2);
    const three = explain(
      task,
      { ...gear, chains: [{ ...gear.chains[0]!, pairs: 3 }] },
      { hookups: [], chainPairs: [3] },
      100,
      limits,
    );
    expect(three.bottom.chainN).toBeCloseTo(3 * 10 * G * 0.8, 9);
  });

  it('says below which height the bands are slack: at their rest length above the anchor', () => {
    const found = explain(task, gearWith(null), hung, 100, limits);
    expect(found.slackBelowM).toBeCloseTo(1, 6);
    expect(codes(found.cautions)).toContain('slackBottom');
    // Where it is slack all the way, its anchor carries nothing.
    const low = explain(
      { ...task, travel: { ...task.travel, lockoutM: 0.9 } },
      gearWith(null),
      hung,
      100,
      limits,
    );
    expect(low.anchors).toEqual([{ anchorId: 'a', pullN: 0, ratedLoadN: null }]);
  });

  it('holds the pull of one side against the rating of its anchor', () => {
    const oneN = bandTension(curves.loading, 1.6);
    expect(codes(explain(task, gearWith(oneN + 1), hung, 100, limits).cautions)).not.toContain(
      'anchorOverloaded',
    );
    expect(codes(explain(task, gearWith(oneN - 1), hung, 100, limits).cautions)).toContain(
      'anchorOverloaded',
    );
    expect(codes(explain(task, gearWith(null), hung, 100, limits).cautions)).toContain('anchorNotRated');
    // Rated for just what it carries, it holds.
    const { anchors } = explain(task, gearWith(null), hung, 100, limits);
    expect(codes(explain(task, gearWith(anchors[0]!.pullN), hung, 100, limits).cautions)).not.toContain(
      'anchorOverloaded',
    );
  });

  it('pulls forward from an anchor in front, the more the higher the tension', () => {
    const { foreAft } = explain(task, gearWith(null, 0.3), hung, 100, limits);
    expect(foreAft.lockoutN).toBeGreaterThan(0);
    // Similar triangles: fore-aft over vertical is 0.3 over the height above the anchor.
    const { lockout } = explain(task, gearWith(null, 0.3), hung, 100, limits);
    expect(foreAft.lockoutN / lockout.bandN).toBeCloseTo(0.3 / 1.6, 9);
    const lower = hungFrom(-0.4, 0.3);
    expect(lower.foreAft.bottomN / lower.bottom.bandN).toBeCloseTo(0.3 / 1.2, 9);
  });

  it('finds a pair uneven by its curves, not by one barely taut height', () => {
    // At 1.01 m one loop is stretched by 10 mm and its twin, a millimetre longer, by 9: a tenth less pull up there.
    expect(uneven(loop(1, 1), loop(1.001, 1), 1.01)).toBeUndefined();
    // Alike in shape, a tenth stiffer: (1.1 - 1) over the mean of 1.1 and 1, whatever the height.
    for (const lockoutM of [1.01, 1.6]) {
      expect(uneven(loop(1, 1), loop(1, 1.1), lockoutM)).toMatchObject({
        share: expect.closeTo(0.1 / 1.05, 6),
      });
    }
  });

  it('warns of a stretch beyond what is safe, and of a lift that would not be made', () => {
    const tight = explain(task, gearWith(null), hung, 100, { ...limits, safeStretch: 1.5 });
    expect(codes(tight.cautions)).toContain('overstretched');
    const heavy = explain(task, gearWith(null), hung, 450, limits);
    expect(heavy.firstRep.made).toBe(false);
    expect(codes(heavy.cautions)).toEqual(expect.arrayContaining(['notMade', 'maximal']));
  });

  it('gives a tired lifter the first rep of one who is weaker by as much', () => {
    const weaker = { ...capability, strengthN: 4000 * Math.exp(-0.1) };
    const [tired, weak, fresh] = [
      explain(task, gearWith(null), hung, 200, limits, 0.1),
      explain({ ...task, capability: weaker }, gearWith(null), hung, 200, limits),
      explain(task, gearWith(null), hung, 200, limits),
    ];
    expect(tired.firstRep).toEqual(weak.firstRep);
    expect(tired.firstRep.meanSpeedMps).toBeLessThan(fresh.firstRep.meanSpeedMps);
  });

  it('wants somebody ready from 85 % of what can be held, wherever that is reached', () => {
    expect(atShare(0.849)).not.toContain('maximal');
    for (const share of [0.85, 0.851]) expect(atShare(share)).toContain('maximal');
    expect(atShare(0.851)).not.toContain('bandsUnderLoad');
  });

  it('says that bands from above lighten the bar, and never so of bands from below', () => {
    // A loop of 1 m from 2.4 m pulls the bar up at 0.8 m, 1.6 m away; from -0.4 m it pulls it down from 1.2 m on.
    const { bottom, cautions } = hungFrom(2.4);
    expect(bottom.bandN).toBeCloseTo(-2 * bandTension(curves.unloading, 1.6), 9);
    expect(cautions).toContainEqual({ code: 'lightened', atBottomN: -bottom.bandN });
    // From the floor it is slack at the bottom, which is no lightening either.
    for (const zM of [-0.4, 0]) expect(codes(hungFrom(zM).cautions)).not.toContain('lightened');
  });
});

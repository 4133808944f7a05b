import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import type { HungBand } from '#core/rig/Rig.ts';
import { bandCautions } from './bandCautions.ts';
import type { RackGear } from './Gear.ts';

/** A loop of 1 m, neo-Hookean of so many N, read up to a stretch; with none it is known by its width alone. */
const loop = (stiffnessN: number, readTo: number | null) =>
  fitBand({
    restLengthM: 1,
    widthMm: 40,
    readings: (readTo === null ? [] : [1.2, 1.4, readTo]).map((lengthM) => ({
      lengthM,
      forceN: stiffnessN * (lengthM - lengthM ** -2),
      direction: 'loading',
    })),
  });

const limits = { safeStretch: 2.5, mismatchShare: 0.05 };
type Loops = readonly ReturnType<typeof loop>[];
interface Hung {
  zM?: number;
  measured?: HungBand | null;
}
/** One rack, the loops of a pair on anchors `zM` above the floor, right under the sleeves. */
function gearOf(loops: Loops, { zM = 0, measured = null }: Hung = {}): RackGear {
  const placed = { hookup: { way: 'single' as const }, anchor: { xM: 0, yM: 0, zM }, count: 1 };
  const rigged = loops.map((curves) => ({ ...placed, curves }));
  const pair = { pairId: 'p', hookupId: 'h', anchorId: 'a', ratedLoadN: 9000, rigged, measured };
  return { barKg: 20, collarsKg: 0, discs: [], chains: [], hookups: [pair] };
}
function cautionsOf(loops: Loops, lockoutM: number, of: Hung = {}) {
  const travel = { bottomM: 0.9, lockoutM, gravityMps2: 9.80665, path: [] };
  return bandCautions(gearOf(loops, of), { hookups: [0], chainPairs: [] }, travel, limits);
}
const said = (...given: Parameters<typeof cautionsOf>) => cautionsOf(...given).map(({ code }) => code);

describe('cautions of bands', () => {
  const sound = loop(200, 1.8);

  it('say of a sound pair only that bands under load want care', () => {
    expect(said([sound, sound], 1.6)).toEqual(['bandsUnderLoad']);
    // So too where one loop stands for both.
    expect(said([sound], 1.6)).toEqual(['bandsUnderLoad']);
  });

  it('name a stretch beyond the limit and none within it', () => {
    const far = loop(200, 2.6);
    expect(said([far, far], 2.49)).toEqual(['bandsUnderLoad']);
    expect(said([far, far], 2.51)).toContain('overstretched');
    // A loop of 1 m on the floor is stretched 2.5 times at 2.5 m: as far as is allowed is allowed.
    const even = { bottomM: 1, lockoutM: 2.5, gravityMps2: 10, path: [] };
    expect(bandCautions(gearOf([far, far]), { hookups: [0], chainPairs: [] }, even, limits)).toEqual([
      { code: 'bandsUnderLoad' },
    ]);
  });

  it('name a reading that ends below lockout, though the bottom lies within', () => {
    expect(said([sound, sound], 1.79)).not.toContain('extrapolated');
    expect(cautionsOf([sound, sound], 1.81)[0]).toEqual({
      code: 'extrapolated',
      pairId: 'p',
      stretch: expect.closeTo(1.81, 12),
    });
    // Hung from above, the bottom is the far end: 2.75 - 0.9 = 1.85 m.
    expect(said([sound, sound], 1.6, { zM: 2.75 })).toContain('extrapolated');
  });

  it('name a pair of which one loop was never hung from a scale', () => {
    expect(said([sound, loop(200, null)], 1.6)).toContain('notMeasured');
    expect(said([sound, sound], 1.6)).not.toContain('notMeasured');
  });

  it('name loops that differ by more than a twentieth, and none that differ by less', () => {
    // Alike in shape, so that their share is 2 (b - a) / (b + a): 8 in 204 is 3.9 %, 12 in 206 is 5.8 %.
    expect(said([sound, loop(208, 1.8)], 1.6)).not.toContain('pairMismatch');
    expect(said([sound, loop(212, 1.8)], 1.6)).toContain('pairMismatch');
    expect(said([loop(212, 1.8), sound], 1.6)).toContain('pairMismatch');
  });

  it('leave the curve out of it where the hookup itself was read on a scale, but not the stretch', () => {
    const measured = {
      verticalAt: [
        { zM: 0.9, forceN: 0 },
        { zM: 1.6, forceN: 200 },
      ],
      count: 2,
    };
    const unmeasured = loop(200, null);
    expect(said([unmeasured, unmeasured], 1.9, { measured })).toEqual(['bandsUnderLoad']);
    expect(said([unmeasured, unmeasured], 2.6, { measured })).toContain('overstretched');
  });
});

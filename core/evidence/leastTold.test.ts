import { describe, expect, it } from 'vitest';
import { effectOf } from './contrast.ts';
import { type GainPair, gainSlope, slopesByEquipment } from './gainSlope.ts';
import { type HeightRow, heightWorth } from './heightWorth.ts';
import { type ShareRow, shareGain } from './shareGain.ts';

// From how many lifters, pairs and contrasts on anything is said (docs/model.md, "evidence"; judgement).

/** Numbers between -1 and 1 that look like noise. */
const noise = (i: number) => Math.sin(12.9898 * (i + 1) ** 2);
/** Gains of so many pairs of each lifter. */
const gains = (...pairs: number[]): GainPair[] =>
  pairs
    .flatMap((count, lifter) => Array.from({ length: count }, () => `${lifter}`))
    .map((lifterId, i) => ({
      lifterId,
      gymGain: 0.03 + 0.04 * noise(i),
      platformGain: 0.02 + 0.02 * noise(i) + 0.01 * noise(i + 50),
      equipped: false,
    }));
const variance = (values: number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
};

const blocks = (counts: number[], spread = 0.1): ShareRow[] =>
  gains(...counts).map(({ lifterId, platformGain }, i) => ({
    lifterId,
    platformGain,
    bandShare: 0.2 + (i % 2 === 0 ? spread : -spread),
    years: 0.4,
  }));

// A setup done n times makes n - 1 comparisons.
const offBoxes = (done: number[], apartM = 0.03): HeightRow[] =>
  done.flatMap((count, lifter) =>
    Array.from({ length: count }, (_, i) => ({
      lifterId: `${lifter}`,
      cell: `${lifter}`,
      heightM: 0.35 + apartM * (i % 2),
      years: 0,
      lnBar: 5 + apartM * (i % 2) + 0.01 * noise(7 * lifter + i),
    })),
  );

describe('what is told', () => {
  it('of carry-over takes three lifters and eight pairs', () => {
    expect(gainSlope(gains(3, 3, 2), 0.01)).not.toBeNull();
    expect(gainSlope(gains(3, 2, 2), 0.01)).toBeNull();
    expect(gainSlope(gains(4, 4), 0.01)).toBeNull();
  });

  it('of raw beside equipped takes as much on either side', () => {
    const worn = (...pairs: number[]) => gains(...pairs).map((pair) => ({ ...pair, equipped: true }));
    expect(slopesByEquipment([...gains(3, 3, 2), ...worn(3, 3, 2)], 0.01)).not.toBeNull();
    expect(slopesByEquipment([...gains(3, 3, 2), ...worn(3, 2, 2)], 0.01)).toBeNull();
    expect(slopesByEquipment([...gains(3, 3, 2), ...worn(4, 4)], 0.01)).toBeNull();
  });

  it('of box height takes three lifters, eight comparisons within a setup, and heights more than 4 mm apart', () => {
    expect(heightWorth(offBoxes([4, 4, 3]))).not.toBeNull();
    expect(heightWorth(offBoxes([4, 3, 3]))).toBeNull();
    expect(heightWorth(offBoxes([5, 5]))).toBeNull();
    expect(heightWorth(offBoxes([4, 4, 3], 0.005))).not.toBeNull();
    expect(heightWorth(offBoxes([4, 4, 3], 0.003))).toBeNull();
  });

  it('of band share takes three lifters, eight blocks, and shares that differ by more than a point', () => {
    expect(shareGain(blocks([3, 3, 2]))).not.toBeNull();
    expect(shareGain(blocks([3, 2, 2]))).toBeNull();
    expect(shareGain(blocks([4, 4]))).toBeNull();
    expect(shareGain(blocks([3, 3, 2], 0.011))).not.toBeNull();
    expect(shareGain(blocks([3, 3, 2], 0.009))).toBeNull();
  });
});

describe('what the noise of single lifts takes from a slope', () => {
  const pairs = gains(6, 6, 6, 6);
  const spread = variance(pairs.map(({ gymGain }) => gymGain));
  const slopeAt = (reliability: number) => gainSlope(pairs, Math.sqrt((1 - reliability) * spread))!;

  it('is put back by dividing by the reliability, which is itself not sure', () => {
    // b / r, Var(b) / r^2 + (b / r)^2 ((1 - r) / r)^2 2 / (n - 1) with r = 1 - v / Var(gym gain) (Fuller 1987, 1.1).
    const r = 0.7;
    const { naive, adjusted, reliability } = slopeAt(r);
    expect(reliability).toBeCloseTo(r, 9);
    expect(adjusted!.value).toBeCloseTo(naive.value / r, 9);
    const squares = (naive.sd / r) ** 2 + ((naive.value / r) * ((1 - r) / r)) ** 2 * (2 / 23);
    expect(adjusted!.sd).toBeCloseTo(Math.sqrt(squares), 9);
  });

  it('is left alone where noise is the greater part', () => {
    expect(slopeAt(0.51).adjusted).not.toBeNull();
    expect(slopeAt(0.49).adjusted).toBeNull();
  });

  it('leaves raw and equipped apart: equipped less raw, their variances added', () => {
    const worn = gains(6, 6, 6, 6).map((pair, i) => ({
      ...pair,
      platformGain: pair.platformGain + 0.2 * pair.gymGain + 0.01 * noise(i + 90),
      equipped: true,
    }));
    const { raw, equipped, difference } = slopesByEquipment([...pairs, ...worn], 0.01)!;
    expect(difference.adjusted!.value).toBeCloseTo(equipped.adjusted!.value - raw.adjusted!.value, 9);
    expect(difference.adjusted!.sd ** 2).toBeCloseTo(raw.adjusted!.sd ** 2 + equipped.adjusted!.sd ** 2, 9);
  });
});

const centred = (values: number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
};

describe('box height', () => {
  it('where all lifters gain alike is worth what least squares within each setup say', () => {
    // Forward deviations leave the estimate within groups as it is (Arellano & Bover 1995, J Econometrics 68:29).
    const heights = [0.3, 0.36, 0.33, 0.42, 0.39];
    const lnBars = heights.map((heightM, i) => 5 + 2 * heightM + 0.02 * noise(i));
    const rows = [0, 1, 2].flatMap((lifter) =>
      heights.map((heightM, i) => ({
        lifterId: `${lifter}`,
        cell: `${lifter}`,
        heightM,
        years: 0,
        lnBar: lnBars[i]! + lifter,
      })),
    );
    const [h, y] = [centred(heights), centred(lnBars)];
    const within = h.reduce((sum, d, i) => sum + d * y[i]!, 0) / h.reduce((sum, d) => sum + d * d, 0);
    expect(heightWorth(rows)!.effect.value).toBeCloseTo(within, 6);
  });
});

describe('a range', () => {
  it('of ten degrees of freedom is Student’s: 1.372 and 2.228 standard errors', () => {
    // Tables of Student's t distribution.
    const { low80, high80, low95, high95 } = effectOf(1, 0.1, 10);
    expect([low80, high80]).toEqual([expect.closeTo(0.8628, 4), expect.closeTo(1.1372, 4)]);
    expect([low95, high95]).toEqual([expect.closeTo(0.7772, 4), expect.closeTo(1.2228, 4)]);
  });
});

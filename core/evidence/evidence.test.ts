import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../numeric/normal.ts';
import type { Effect } from './contrast.ts';
import { type GainPair, gainSlope, slopesByEquipment } from './gainSlope.ts';
import { type HeightRow, heightWorth } from './heightWorth.ts';
import { type ShareRow, shareGain } from './shareGain.ts';

const REPEATS = 200;
const LIFTERS = 14;
const MEETS = 6;
const GYM_NOISE = 0.02;
const PLATFORM_NOISE = 0.012;

type Normal = (mean: number, sd: number) => number;

function normals(seed: number): Normal {
  const random = xoroshiro128plus(seed);
  return (mean, sd) =>
    mean + sd * normalQuantile(Math.min(Math.max(uniformFloat64(random), 1e-12), 1 - 1e-12));
}

/**
 * A made-up club whose gym gains reach the platform with the slope `carryOver` in the middle. Bests carry the noise of
 * their day, so that what one meet's noise gives to a gain it takes from the next.
 */
function club(normal: Normal, carryOver: number, equippedLess = 0): GainPair[] {
  return Array.from({ length: LIFTERS }, (_, i) => {
    const equipped = i % 2 === 1;
    const slope = normal(carryOver - (equipped ? equippedLess : 0), 0.15);
    const gymNoise = Array.from({ length: MEETS + 1 }, () => normal(0, GYM_NOISE));
    const platformNoise = Array.from({ length: MEETS + 1 }, () => normal(0, PLATFORM_NOISE));
    return Array.from({ length: MEETS }, (__, k) => {
      const gain = normal(0.03, 0.045);
      return {
        lifterId: `${i}`,
        gymGain: gain + gymNoise[k + 1]! - gymNoise[k]!,
        platformGain: 0.005 + slope * gain + platformNoise[k + 1]! - platformNoise[k]!,
        equipped,
      };
    });
  }).flat();
}

/** How often 80 and 95 % ranges of the repeats hold the truth. */
function held(effects: readonly Effect[], truth: number) {
  const share = (inside: (effect: Effect) => boolean) => effects.filter(inside).length / effects.length;
  return {
    in80: share(({ low80, high80 }) => low80 <= truth && truth <= high80),
    in95: share(({ low95, high95 }) => low95 <= truth && truth <= high95),
    mean: effects.reduce((sum, { value }) => sum + value, 0) / effects.length,
  };
}

/** With this many repeats a share of 80 % is known to 2.5 points, one of 95 % to 1.4 (binomial): three of those are allowed. */
const expectHeld = ({ in80, in95 }: { in80: number; in95: number }) => {
  expect(Math.abs(in80 - 0.8)).toBeLessThan(0.075);
  expect(Math.abs(in95 - 0.95)).toBeLessThan(0.045);
};

describe('carry-over from gym to platform', () => {
  const normal = normals(20261125);
  const repeats = Array.from(
    { length: REPEATS },
    () => gainSlope(club(normal, 0.7), GYM_NOISE * Math.SQRT2)!,
  );

  it('its adjusted ranges hold a true 0.7 as often as they say', () => {
    const adjusted = held(
      repeats.map((slope) => slope.adjusted!),
      0.7,
    );
    expectHeld(adjusted);
    expect(Math.abs(adjusted.mean - 0.7)).toBeLessThan(0.03);
  });

  it('the naive slope is flattened by the noise of single lifts, by as much as theory says', () => {
    const naive = held(
      repeats.map((slope) => slope.naive),
      0.7,
    );
    // Fuller 1987, section 1.1: slope times (spread of true gains) / (spread of seen gains).
    const flattened = (0.7 * 0.045 ** 2) / (0.045 ** 2 + 2 * GYM_NOISE ** 2);
    expect(Math.abs(naive.mean - flattened)).toBeLessThan(0.02);
    expect(naive.in80).toBeLessThan(0.4);
  });

  it('a lifter is shrunk toward the club: no slope of one lifter is further off than the steepest own line', () => {
    const pairs = club(normal, 0.7);
    const { byLifter, naive } = gainSlope(pairs, 0.02)!;
    expect(byLifter.length).toBe(LIFTERS);
    const spread = Math.max(...byLifter.map((one) => Math.abs(one.naive.value - naive.value)));
    const own = byLifter.map(({ lifterId }) => ownLine(pairs.filter((pair) => pair.lifterId === lifterId)));
    expect(spread).toBeLessThan(Math.max(...own.map((slope) => Math.abs(slope - naive.value))));
    for (const one of byLifter) expect(one.naive.sd).toBeGreaterThan(naive.sd);
  });

  it('says nothing of two lifters, of seven pairs, or of gains that never differed', () => {
    const pairs = club(normal, 0.7);
    expect(
      gainSlope(
        pairs.filter(({ lifterId }) => Number(lifterId) < 2),
        0.02,
      ),
    ).toBeNull();
    expect(gainSlope(pairs.filter((_, i) => i % MEETS === 0).slice(0, 7), 0.02)).toBeNull();
    expect(
      gainSlope(
        pairs.map((pair) => ({ ...pair, gymGain: 0.03 })),
        0.02,
      ),
    ).toBeNull();
  });

  it('takes nothing out where gains are known exactly, and gives up where noise is the greater part', () => {
    const pairs = club(normal, 0.7);
    const exact = gainSlope(pairs, 0)!;
    expect(exact.adjusted!.value).toBe(exact.naive.value);
    expect(gainSlope(pairs, 0.05)!.adjusted).toBeNull();
  });
});

describe('raw beside equipped', () => {
  it('its ranges hold a true difference of -0.3 as often as they say', () => {
    const normal = normals(7);
    const repeats = Array.from(
      { length: REPEATS },
      () => slopesByEquipment(club(normal, 0.8, 0.3), GYM_NOISE * Math.SQRT2)!,
    );
    const differences = repeats.flatMap(({ difference }) => difference.adjusted ?? []);
    expectHeld(held(differences, -0.3));
  });
});

describe('what box height is worth', () => {
  it('holds a true 2 % a centimetre as often as it says, whatever each band set and date add', () => {
    const normal = normals(11);
    const repeats = Array.from({ length: REPEATS }, () => heightWorth(boxes(normal))!.effect);
    expectHeld(held(repeats, 2));
  });

  it('is exact where nothing else varies', () => {
    const rows = boxes(() => 0).map((row) => ({ ...row, lnBar: 2 * row.heightM + 0.1 * row.years }));
    expect(heightWorth(rows)!.effect.value).toBeCloseTo(2, 6);
  });

  it('says nothing where nobody ever changed the box', () => {
    expect(heightWorth(boxes(normals(3)).map((row) => ({ ...row, heightM: 0.36 })))).toBeNull();
  });
});

describe('band share in training', () => {
  it('holds the true slope as often as it says', () => {
    const normal = normals(13);
    const repeats = Array.from({ length: REPEATS }, () => {
      const rows: ShareRow[] = Array.from({ length: LIFTERS * 5 }, (_, i) => {
        const bandShare = 0.2 + normal(0, 0.06);
        const years = 0.4 + normal(0, 0.1);
        const platformGain = 0.02 + 0.1 * bandShare + 0.02 * years + normal(0, 0.02);
        return { lifterId: `${i % LIFTERS}`, bandShare, years, platformGain };
      });
      return shareGain(rows)!.effect;
    });
    expectHeld(held(repeats, 0.1));
  });
});

/** Singles off boxes of 30 to 42 cm with two band sets a lifter, strength rising 5 % a year. */
function boxes(normal: Normal): HeightRow[] {
  return Array.from({ length: 8 }, (_, i) => {
    const worth = normal(2, 0.3);
    return ['light', 'heavy'].flatMap((bands) => {
      const level = normal(5, 0.2);
      return Array.from({ length: 7 }, (__, k) => {
        const heightM = 0.3 + 0.03 * ((k * 3 + i) % 5);
        const years = k / 10;
        const lnBar = level + worth * heightM + 0.05 * years + normal(0, 0.02);
        return { lifterId: `${i}`, cell: `${i} ${bands}`, heightM, years, lnBar };
      });
    });
  }).flat();
}

function ownLine(pairs: readonly GainPair[]): number {
  const mean = (of: (pair: GainPair) => number) =>
    pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length;
  const [x, y] = [mean((pair) => pair.gymGain), mean((pair) => pair.platformGain)];
  const across = pairs.reduce((sum, pair) => sum + (pair.gymGain - x) * (pair.platformGain - y), 0);
  return across / pairs.reduce((sum, pair) => sum + (pair.gymGain - x) ** 2, 0);
}

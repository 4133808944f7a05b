import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { expect, it } from 'vitest';
import { normalQuantile } from '#core/numeric/normal.ts';
import { VARIANCE_OF_BEST } from './gainNoise.ts';

it('the variance of the best of two and of three is that of the closed forms', () => {
  // David & Nagaraja, Order Statistics, section 3.2.
  expect(VARIANCE_OF_BEST[1]).toBeCloseTo(1 - 1 / Math.PI, 4);
  expect(VARIANCE_OF_BEST[2]).toBeCloseTo(1 + Math.sqrt(3) / (2 * Math.PI) - 9 / (4 * Math.PI), 4);
});

it('and of more as in 20,000 draws, to 4 %', () => {
  const random = xoroshiro128plus(5);
  const draw = () => normalQuantile(Math.min(Math.max(uniformFloat64(random), 1e-12), 1 - 1e-12));
  for (const [i, variance] of VARIANCE_OF_BEST.entries()) {
    const bests = Array.from({ length: 20_000 }, () => Math.max(...Array.from({ length: i + 1 }, draw)));
    const mean = bests.reduce((sum, best) => sum + best, 0) / bests.length;
    const found = bests.reduce((sum, best) => sum + (best - mean) ** 2, 0) / (bests.length - 1);
    expect(Math.abs(found / variance - 1)).toBeLessThan(0.04);
  }
});

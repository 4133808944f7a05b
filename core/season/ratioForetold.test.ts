import { expect, it } from 'vitest';
import { ratioForetold } from './ratioForetold.ts';

it('foretells one more case by the mean of the earlier ones, with the range of a normal sample', () => {
  // Ln ratios -0.1, 0 and 0.1: mean 0, s 0.1. t(0.975; 2) = 4.303: NIST/SEMATECH e-Handbook, table of critical values of t, from memory.
  const cases = [-0.1, 0, 0.1].map((ln) => ({ from: 250, to: 250 * Math.exp(ln) }));
  const { ratio, value, low95, high95 } = ratioForetold(cases, 300)!;
  expect(ratio).toBeCloseTo(1, 12);
  expect(value).toBeCloseTo(300, 9);
  const half = 4.303 * 0.1 * Math.sqrt(4 / 3);
  expect(Math.log(high95! / 300)).toBeCloseTo(half, 3);
  expect(Math.log(low95! / 300)).toBeCloseTo(-half, 3);
});

it('tells no range of a single case, and nothing of none', () => {
  expect(ratioForetold([{ from: 300, to: 270 }], 310)).toMatchObject({
    value: 279,
    low95: null,
    high95: null,
  });
  expect(ratioForetold([], 310)).toBeNull();
});

import { expect, test } from 'vitest';
import { lackedRoots, rowOfLacking, slipChances, slipRoots } from './lackedByMiss.ts';

const at = (table: Float64Array, lackingLn: number) => table[rowOfLacking(lackingLn)]!;

// Mean of a normal above nought: sd (z + density(z) / share(z)); at z = 0 sd sqrt(2 / pi), at z = -1 sd (0.2419707 / 0.1586553 - 1) (Abramowitz & Stegun
// 1964, table 26.1). From set to set strength scatters by 0.012, a slip by 0.12 (docs/model.md, "strength").
test('what a missed set lacked is what of its luck lies above nought, and just what the day lacked where that is much', () => {
  for (const [table, sd] of [
    [lackedRoots, 0.012],
    [slipRoots, 0.12],
  ] as const) {
    expect(at(table, 0) ** 2).toBeCloseTo(sd * Math.sqrt(2 / Math.PI), 9);
    expect(at(table, -sd) ** 2).toBeCloseTo(sd * (0.2419707 / 0.1586553 - 1), 6);
  }
  expect(at(lackedRoots, 0.1) ** 2).toBeCloseTo(0.1, 9);
  // Far below nought it hardly differs from farther down; beyond the table its end stands.
  expect(at(lackedRoots, -0.5)).toBe(at(lackedRoots, -0.06));
  expect(at(lackedRoots, -10)).toBe(lackedRoots[0]);
  expect(at(lackedRoots, 10)).toBe(lackedRoots.at(-1));
});

test('a miss with strength to spare is the likelier a slip the more there was, and none where strength lacked', () => {
  expect([at(slipChances, 0), at(slipChances, 0.05)]).toEqual([0, 0]);
  // Two in a hundred slip; at -0.012 luck misses 0.1586553 of sets, a slip Phi(-0.1) = 0.4601722 (same table).
  const slip = 0.02 * 0.4601722;
  expect(at(slipChances, -0.012)).toBeCloseTo(slip / (slip + 0.98 * 0.1586553), 6);
  expect(at(slipChances, -0.12)).toBeGreaterThan(0.999);
});

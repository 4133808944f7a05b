import { expect, it } from 'vitest';
import { contrast } from './contrast.ts';
import { fitMixed } from './fitMixed.ts';

it('gives an effect of rows that do not scatter at all, with ranges of no width', () => {
  const rows = ['a', 'b', 'c'].flatMap((group) => [0, 1, 2].map((x) => ({ group, x })));
  const fit = fitMixed({
    values: rows.map(() => 0),
    fixed: rows.map(({ x }) => [1, x]),
    random: rows.map(() => [1]),
    groups: rows.map(({ group }) => group),
    method: 'reml',
  });
  const { degreesOfFreedom, ...effect } = contrast(fit, [0, 1]);
  expect(effect).toEqual({ value: 0, sd: 0, low80: 0, high80: 0, low95: 0, high95: 0 });
  expect(degreesOfFreedom).toBeGreaterThanOrEqual(1);
});

import { describe, expect, it } from 'vitest';
import type { Way } from './drawWays.ts';
import { wayDifference } from './wayDifference.ts';

/** Made-up lifters who gain 2 % up to week 8 the first way and 5 % the second, with tests that hardly scatter. */
function crew(first: number, second: number, weeks = [0, 4, 8]) {
  return Array.from({ length: first + second }, (_, i) => {
    const way: Way = i < first ? 0 : 1;
    return weeks.map((week, k) => ({
      lifterId: `${i}`,
      way,
      week,
      lnValue: 5 + 0.1 * i + ((way === 0 ? 0.02 : 0.05) * week) / 8 + 1e-4 * Math.sin(5 * i + 3 * k),
    }));
  }).flat();
}

describe('the difference of two ways', () => {
  it.each([
    ['three tests each', [0, 4, 8]],
    ['two tests each', [0, 8]],
  ])('is the second gain less the first at the week asked for: %s', (_, weeks) => {
    const { gains, difference } = wayDifference(crew(4, 4, weeks), 16)!;
    expect(gains[0].value).toBeCloseTo(0.04, 3);
    expect(gains[1].value).toBeCloseTo(0.1, 3);
    expect(difference.value).toBeCloseTo(0.06, 3);
  });

  it('takes three lifters of either way who were tested in two weeks', () => {
    expect(wayDifference(crew(3, 3), 8)!.lifters).toEqual([3, 3]);
    expect(wayDifference(crew(2, 4), 8)).toBeNull();
    expect(wayDifference(crew(4, 2), 8)).toBeNull();
    expect(wayDifference([...crew(3, 2), ...crew(3, 3, [0, 0]).slice(-2)], 8)).toBeNull();
  });
});

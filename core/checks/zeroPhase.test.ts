import { describe, expect, it } from 'vitest';
import { zeroPhase } from '../numeric/zeroPhase.ts';
import reference from './reference/zeroPhase.json' with { type: 'json' };

describe('the zero-phase low-pass', () => {
  it.each(Object.entries(reference.values))('gives what SciPy gives: %s', (_, row) => {
    const out = zeroPhase(Float64Array.from(row.in), row.cutoffHz, row.rateHz);
    const worst = Math.max(...row.out.map((value, i) => Math.abs(value - out[i]!)));
    expect(worst).toBeLessThan(reference.tolerance);
  });

  it.each([2, 6, 12])(
    'lets 1 / sqrt 2 of a motion at the cut-off through, and shifts it by nothing (%d Hz)',
    (hz) => {
      const rateHz = 100;
      const wave = Float64Array.from({ length: 2000 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / rateHz));
      const out = zeroPhase(wave, hz, rateHz);
      // Least squares against sine and cosine over whole periods in the middle.
      const part = (of: (angle: number) => number) =>
        out.slice(500, 1500).reduce((sum, y, i) => sum + y * of((2 * Math.PI * hz * (i + 500)) / rateHz), 0) /
        500;
      expect(part(Math.sin)).toBeCloseTo(Math.SQRT1_2, 9);
      expect(part(Math.cos)).toBeCloseTo(0, 9);
    },
  );

  it('leaves a straight line as it is', () => {
    const line = Float64Array.from({ length: 60 }, (_, i) => 0.4 + 0.01 * i);
    zeroPhase(line, 6, 50).forEach((y, i) => expect(y).toBeCloseTo(line[i]!, 3));
  });
});

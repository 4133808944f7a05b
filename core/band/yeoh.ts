import type { BandForm } from './BandForm.ts';

/**
 * Yeoh: `F = 2 (lambda - lambda^-2) (C10 + 2 C20 J + 3 C30 J^2)` with `J = I1 - 3 = lambda^2 + 2/lambda - 3`,
 * C10, C20 and C30 in N. Yeoh 1990, Rubber Chem Technol 63:792-805; Yeoh 1993, 66:754-771.
 */
export const yeoh: BandForm = {
  name: 'yeoh',
  parameterNames: ['c10N', 'c20N', 'c30N'],
  force: ([c10, c20, c30]) => {
    const a = 2 * c10!;
    const b = 4 * c20!;
    const c = 6 * c30!;
    return (lambda) => {
      const j = lambda * lambda + 2 / lambda - 3;
      return (lambda - 1 / (lambda * lambda)) * (a + j * (b + j * c));
    };
  },
  gradient: (_, lambda) => {
    const j = lambda * lambda + 2 / lambda - 3;
    const stretch = 2 * (lambda - 1 / (lambda * lambda));
    return [stretch, 2 * stretch * j, 3 * stretch * j * j];
  },
  ranges: [
    {
      lower: [-Infinity, -Infinity, -Infinity],
      upper: [Infinity, Infinity, Infinity],
      start: [0.29, 0, 0],
    },
  ],
};

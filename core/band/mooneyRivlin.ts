import type { BandForm } from './BandForm.ts';

/**
 * Mooney-Rivlin: `F = 2 (lambda - lambda^-2) (C1 + C2 / lambda)`, C1 and C2 in N.
 * Mooney 1940, J Appl Phys 11:582-592; Rivlin 1948, Phil Trans R Soc A 241:379.
 */
export const mooneyRivlin: BandForm = {
  name: 'mooneyRivlin',
  parameterNames: ['c1N', 'c2N'],
  force: ([c1, c2]) => {
    const a = 2 * c1!;
    const b = 2 * c2!;
    return (lambda) => (lambda - 1 / (lambda * lambda)) * (a + b / lambda);
  },
  gradient: (_, lambda) => {
    const stretch = 2 * (lambda - 1 / (lambda * lambda));
    return [stretch, stretch / lambda];
  },
  ranges: [{ lower: [-Infinity, -Infinity], upper: [Infinity, Infinity], start: [0.2, 0.1] }],
};

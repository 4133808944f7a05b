import type { BandForm } from './BandForm.ts';

/**
 * Neo-Hookean: `F = mu (lambda - lambda^-2)`, mu in N.
 * Treloar 1943, Trans Faraday Soc 39:241; Rivlin 1948, Phil Trans R Soc A 240:459.
 */
export const neoHookean: BandForm = {
  name: 'neoHookean',
  parameterNames: ['muN'],
  force: ([mu]) => {
    const m = mu!;
    return (lambda) => m * (lambda - 1 / (lambda * lambda));
  },
  gradient: (_, lambda) => [lambda - 1 / (lambda * lambda)],
  ranges: [{ lower: [0], upper: [Infinity], start: [0.57] }],
};

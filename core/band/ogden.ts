import type { BandForm } from './BandForm.ts';

/**
 * Ogden, one or two terms: `F = sum mu_i (lambda^(alpha_i - 1) - lambda^(-alpha_i / 2 - 1))`, mu_i in N, alpha_i of 1.
 * Ogden 1972, Proc R Soc Lond A 326:565-584. A stable term has `mu_i alpha_i >= 0`, so the exponents are searched on
 * one side of 0 at a time; their limits are wide of the published -2 to 5 (same paper).
 */
export const ogden1: BandForm = {
  name: 'ogden1',
  parameterNames: ['mu1N', 'alpha1'],
  force: ogdenForce,
  gradient: ogdenGradient,
  ranges: [{ lower: [0, 0.5], upper: [Infinity, 12], start: [0.8, 1.5] }],
};

export const ogden2: BandForm = {
  name: 'ogden2',
  parameterNames: ['mu1N', 'alpha1', 'mu2N', 'alpha2'],
  force: ogdenForce,
  gradient: ogdenGradient,
  ranges: [
    // A soft term and one that stiffens late.
    { lower: [0, 0.5, 0, 3], upper: [Infinity, 3, Infinity, 12], start: [0.8, 1.3, 0.001, 5] },
    // A soft term and one that is stiff at the very start.
    { lower: [0, 0.5, -Infinity, -12], upper: [Infinity, 12, 0, -0.5], start: [0.3, 2, -0.3, -1] },
  ],
};

function ogdenForce(parameters: readonly number[]): (lambda: number) => number {
  const terms: { mu: number; rise: number; fall: number }[] = [];
  for (let i = 0; i < parameters.length; i += 2) {
    const alpha = parameters[i + 1]!;
    terms.push({ mu: parameters[i]!, rise: alpha - 1, fall: -alpha / 2 - 1 });
  }
  return (lambda) => {
    const log = Math.log(lambda);
    let force = 0;
    for (const { mu, rise, fall } of terms) force += mu * (Math.exp(rise * log) - Math.exp(fall * log));
    return force;
  };
}

function ogdenGradient(parameters: readonly number[], lambda: number): number[] {
  const log = Math.log(lambda);
  const gradient: number[] = [];
  for (let i = 0; i < parameters.length; i += 2) {
    const mu = parameters[i]!;
    const alpha = parameters[i + 1]!;
    const rise = Math.exp((alpha - 1) * log);
    const fall = Math.exp((-alpha / 2 - 1) * log);
    gradient.push(rise - fall, mu * log * (rise + fall / 2));
  }
  return gradient;
}

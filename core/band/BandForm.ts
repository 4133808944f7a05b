import type { BandModel } from './BandCurve.ts';

/**
 * A stress-stretch form of an incompressible hyperelastic solid in simple tension, as the force of one loop:
 * `F(lambda) = A P(lambda)` with `lambda = length / rest length` and the loop's section A (both legs, m2) folded into
 * the stiffness parameters, which are therefore in N. Every form gives exactly 0 at `lambda = 1`.
 */
export interface BandForm {
  name: Exclude<BandModel, 'line' | 'prior'>;
  parameterNames: readonly string[];
  /** Force (N) by stretch ratio, ready for a hot loop. */
  force: (parameters: readonly number[]) => (lambda: number) => number;
  /** Derivatives of the force by each parameter at one stretch ratio. */
  gradient: (parameters: readonly number[], lambda: number) => number[];
  /** Where the parameters may lie and where a search starts; the least misfit over all ranges wins. */
  ranges: readonly FormRange[];
}

export interface FormRange {
  lower: readonly number[];
  upper: readonly number[];
  /** For a loop that pulls about 1 N at twice its rest length. */
  start: readonly number[];
}

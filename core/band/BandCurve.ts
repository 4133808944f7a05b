/** Names of the fitted forms; `line` from two readings, `prior` from the width alone. */
export type BandModel = 'neoHookean' | 'mooneyRivlin' | 'yeoh' | 'ogden1' | 'ogden2' | 'line' | 'prior';

/** Whether the band lengthens (`loading`) or shortens while its force is read. */
export type Direction = 'loading' | 'unloading';

/** One look at the scale: end-to-end length of the loop (m) under a force (N). */
export interface BandReading {
  lengthM: number;
  forceN: number;
  direction: Direction;
}

/**
 * Force of one loop against its length, for one direction, as plain data.
 * The force is 0 up to the rest length. Evaluate with `bandTension`, with interval by `bandTensionInterval`.
 */
export interface BandCurve {
  model: BandModel;
  /** Values in the model's own order (`parameterNames`), N for stiffnesses, 1 for exponents. */
  parameters: readonly number[];
  parameterNames: readonly string[];
  /** Covariance of `parameters`, row by row; for `prior` of ln(level) alone. */
  covariance: readonly (readonly number[])[];
  restLengthM: number;
  /** Longest length read; the rest length where nothing was read. */
  measuredToM: number;
  known: 'measured' | 'notMeasured';
  /** The branch that the readings belong to; differs from the one asked for where only the other was measured. */
  direction: Direction;
  /** Residual scale relative to the assumed reading error, and its degrees of freedom. */
  residualScale: number;
  degreesOfFreedom: number;
}

/** Both branches of one loop. `unloading` is the loading curve again where only that was measured. */
export interface BandCurves {
  loading: BandCurve;
  unloading: BandCurve;
}

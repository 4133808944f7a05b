/** Share of the force and constant part (N) of a hanging scale's and a tape's joint error: assumption. */
const RELATIVE_ERROR = 0.015;
const CONSTANT_ERROR_N = 2;

/** Standard deviation (N) assumed for one force reading of a band. */
export function readingErrorN(forceN: number): number {
  return Math.hypot(RELATIVE_ERROR * forceN, CONSTANT_ERROR_N);
}

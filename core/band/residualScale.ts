/** Weight of the belief that readings err as assumed (`readingErrorN`), in degrees of freedom: assumption. */
const PRIOR_DEGREES = 2;

/**
 * How far readings scatter about their curve, relative to the assumed reading error, with its degrees of freedom:
 * `s^2 = (nu0 + chi2) / (nu0 + n - p)` with nu0 = 2. A few readings that happen to fit well prove little, so the
 * assumed error keeps its say.
 */
export function residualScale(
  chiSquare: number,
  readings: number,
  parameters: number,
): { residualScale: number; degreesOfFreedom: number } {
  const degreesOfFreedom = PRIOR_DEGREES + readings - parameters;
  return {
    residualScale: Math.sqrt((PRIOR_DEGREES + chiSquare) / degreesOfFreedom),
    degreesOfFreedom,
  };
}

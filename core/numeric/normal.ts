/** So many standard deviations on either side of the middle hold 95 % of the normal distribution: its quantile of 0.975. */
export const NORMAL_95 = 1.959963984540054;

/** ln of sqrt(2 pi). */
const LN_ROOT_TWO_PI = 0.9189385332046727;

export function normalDensity(x: number): number {
  return Math.exp(-0.5 * x * x - LN_ROOT_TWO_PI);
}

/**
 * Distribution function of the standard normal, absolute error below 1e-15 and relative error below 1e-12 in the
 * lower tail: the series about 0 for small x (Abramowitz & Stegun 1964, 26.2.11), the continued fraction of the
 * tail beyond (26.2.14).
 */
export function normalCdf(x: number): number {
  if (Number.isNaN(x)) return Number.NaN;
  const size = Math.abs(x);
  if (size > 38.6) return x > 0 ? 1 : 0;
  if (size < 3) {
    let term = x;
    let sum = x;
    for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
      term *= (x * x) / k;
      sum += term;
    }
    return 0.5 + sum * normalDensity(x);
  }
  let fraction = size;
  for (let k = 120; k >= 1; k--) fraction = size + k / fraction;
  const tail = normalDensity(x) / fraction;
  return x > 0 ? 1 - tail : tail;
}

/**
 * The x with `normalCdf(x) = probability`, for probabilities within (0, 1): a rough start (Abramowitz & Stegun 1964,
 * 26.2.23) and Halley's rule to 1e-12.
 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError('probability must lie between 0 and 1');
  const tail = Math.min(probability, 1 - probability);
  const t = Math.sqrt(-2 * Math.log(tail));
  let x = -(
    t -
    (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)))
  );
  for (let i = 0; i < 3; i++) {
    const step = (normalCdf(x) - tail) / normalDensity(x);
    x -= step / (1 + 0.5 * x * step);
  }
  return probability < 0.5 ? x : -x;
}

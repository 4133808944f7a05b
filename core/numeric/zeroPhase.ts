/**
 * Low-pass filter that shifts nothing in time: a second-order Butterworth filter run forward and backward over evenly
 * spaced values, so of fourth order in all. The design frequency is raised so that the two passes together let
 * 1/sqrt(2) of a motion at `cutoffHz` through: tan(pi f / rate) over (sqrt(2) - 1)^(1/4) (Winter, Biomechanics and Motor
 * Control of Human Movement, ch. 3; Robertson & Dowling 2003, J Electromyogr Kinesiol 13:569; from memory). Ends: nine
 * values mirrored through the end value, and the filter begun as if that had always been there (Gustafsson 1996, IEEE
 * Trans Signal Process 44:988, names the alternatives).
 */
export function zeroPhase(values: Float64Array, cutoffHz: number, rateHz: number): Float64Array {
  if (!(cutoffHz > 0 && cutoffHz < 0.45 * rateHz)) {
    throw new RangeError(`cutoffHz ${cutoffHz} must lie between 0 and 0.45 of rateHz ${rateHz}`);
  }
  if (values.length <= MIRRORED) throw new RangeError(`needs more than ${MIRRORED} values`);
  const filter = butterworth2(Math.tan((Math.PI * cutoffHz) / rateHz) / TWO_PASSES);
  const padded = mirrored(values);
  const forward = pass(padded, filter).reverse();
  return pass(forward, filter)
    .reverse()
    .slice(MIRRORED, MIRRORED + values.length);
}

const TWO_PASSES = (Math.SQRT2 - 1) ** 0.25;
const MIRRORED = 9;

/** `y[n] = b0 x[n] + b1 x[n-1] + b2 x[n-2] - a1 y[n-1] - a2 y[n-2]` */
interface Filter {
  b: [number, number, number];
  a1: number;
  a2: number;
}

/** Second-order Butterworth by the bilinear transform, from `k = tan(pi f / rate)`. */
function butterworth2(k: number): Filter {
  const whole = 1 + Math.SQRT2 * k + k * k;
  const b0 = (k * k) / whole;
  return {
    b: [b0, 2 * b0, b0],
    a1: (2 * (k * k - 1)) / whole,
    a2: (1 - Math.SQRT2 * k + k * k) / whole,
  };
}

/** The values with both ends turned about themselves: `2 end - value`. */
function mirrored(values: Float64Array): Float64Array {
  const { length } = values;
  const out = new Float64Array(length + 2 * MIRRORED);
  out.set(values, MIRRORED);
  for (let i = 1; i <= MIRRORED; i++) {
    out[MIRRORED - i] = 2 * values[0]! - values[i]!;
    out[MIRRORED + length - 1 + i] = 2 * values[length - 1]! - values[length - 1 - i]!;
  }
  return out;
}

/** One pass, begun in the steady state of the first value. */
function pass(values: Float64Array, { b: [b0, b1, b2], a1, a2 }: Filter): Float64Array {
  const first = values[0]!;
  let kept1 = (1 - b0) * first;
  let kept2 = (b2 - a2) * first;
  return values.map((x) => {
    const y = b0 * x + kept1;
    kept1 = b1 * x - a1 * y + kept2;
    kept2 = b2 * x - a2 * y;
    return y;
  });
}

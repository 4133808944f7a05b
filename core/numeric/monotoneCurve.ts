/**
 * A smooth curve through points that neither overshoots nor turns between them: piecewise cubic with the slopes of
 * Fritsch & Carlson 1980, SIAM J Numer Anal 17:238-246, in the weighted harmonic form of Fritsch & Butland 1984,
 * SIAM J Sci Stat Comput 5:300-304, and one-sided three-point slopes at the ends. A straight line through two points;
 * beyond the ends straight on with the end slope.
 */
export interface MonotoneCurve {
  at: (x: number) => number;
  slopeAt: (x: number) => number;
}

/** Two points or more (`xs[i]`, `ys[i]`), in any order, no x twice. */
export function monotoneCurve(xs: readonly number[], ys: readonly number[]): MonotoneCurve {
  if (xs.length < 2) throw new RangeError('a curve needs two points or more');
  const order = xs.map((_, i) => i).sort((a, b) => xs[a]! - xs[b]!);
  const x = order.map((i) => xs[i]!);
  const y = order.map((i) => ys[i]!);
  const width = x.slice(1).map((right, i) => right - x[i]!);
  if (!width.every((w) => w > 0)) throw new RangeError('a curve cannot pass two points at the same x');
  const secant = width.map((w, i) => (y[i + 1]! - y[i]!) / w);
  const slope = slopes(width, secant);
  const last = x.length - 1;

  const pieceAt = (at: number): number => {
    let i = 0;
    while (i < last - 1 && at >= x[i + 1]!) i++;
    return i;
  };
  return {
    at: (at) => {
      if (at <= x[0]!) return y[0]! + slope[0]! * (at - x[0]!);
      if (at >= x[last]!) return y[last]! + slope[last]! * (at - x[last]!);
      const i = pieceAt(at);
      const w = width[i]!;
      const t = (at - x[i]!) / w;
      const u = 1 - t;
      return (
        u * u * ((1 + 2 * t) * y[i]! + t * w * slope[i]!) +
        t * t * ((1 + 2 * u) * y[i + 1]! - u * w * slope[i + 1]!)
      );
    },
    slopeAt: (at) => {
      if (at <= x[0]!) return slope[0]!;
      if (at >= x[last]!) return slope[last]!;
      const i = pieceAt(at);
      const t = (at - x[i]!) / width[i]!;
      const u = 1 - t;
      return 6 * t * u * secant[i]! + u * (1 - 3 * t) * slope[i]! + t * (1 - 3 * u) * slope[i + 1]!;
    },
  };
}

function slopes(width: readonly number[], secant: readonly number[]): number[] {
  if (secant.length === 1) return [secant[0]!, secant[0]!];
  const inner = secant.slice(1).map((right, i) => {
    const left = secant[i]!;
    if (left * right <= 0) return 0;
    const a = 2 * width[i + 1]! + width[i]!;
    const b = width[i + 1]! + 2 * width[i]!;
    return (a + b) / (a / left + b / right);
  });
  const first = endSlope(width[0]!, width[1]!, secant[0]!, secant[1]!);
  const lastSlope = endSlope(width.at(-1)!, width.at(-2)!, secant.at(-1)!, secant.at(-2)!);
  return [first, ...inner, lastSlope];
}

/** Slope of the parabola through the three points at an end, held back so that the end piece stays monotone. */
function endSlope(near: number, far: number, secantNear: number, secantFar: number): number {
  const slope = ((2 * near + far) * secantNear - near * secantFar) / (near + far);
  if (slope * secantNear <= 0) return 0;
  if (secantNear * secantFar < 0 && Math.abs(slope) > 3 * Math.abs(secantNear)) return 3 * secantNear;
  return slope;
}

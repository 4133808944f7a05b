import type { Equipment, Lift, Start } from '#contract/records/lift.ts';

/**
 * Strength by height of the invented lifters: what can be held from a dead stop, straight between points that lie at
 * heights in metres above the bar's free bottom. All of it is invented, and on purpose none of the forms that the
 * estimate fits: no smooth curve over shares of the range, and a rebound that fades with the way gone instead of time.
 *
 *   c(x) = stop(x) (1 + rebound way (1 - (x - bottom) / REBOUND_WAY_M)+) (1 + gear help(x))
 *
 * The order of the points follows what is published: maxima rise as the range is cut from below (Martinez-Cava et al.
 * 2019, bench press; Bazyler et al. 2015, squat), pulling force rises with bar height (Beckham et al. 2012).
 */
export interface HeightStrength {
  lift: Lift;
  /** All heights of the points times this: long and short lifters. */
  stretch: number;
  /** Added to ln strength half way up: weak or strong in the middle. */
  middle: number;
  /** Rebound of a free start as a share. */
  rebound: number;
  /** Share of the rebound that is left off a box, on boards or after a pause. */
  held: number;
  /** What supportive equipment adds at the height where it helps most, as a share. */
  gear: number;
}

/** How far the rebound carries. */
const REBOUND_WAY_M = 0.3;
/** Equipment helps at the bottom and less higher up: share left this far above the bottom. */
const GEAR_LEFT = 0.8;
const GEAR_WAY_M = 0.5;

/** Height above the free bottom (m), strength from a dead stop; 1 at the free bottom. */
const POINTS: Record<Lift, readonly (readonly [number, number])[]> = {
  squat: [
    [-0.15, 0.64],
    [-0.04, 0.9],
    [0, 1],
    [0.05, 1.08],
    [0.12, 1.13],
    [0.22, 1.16],
    [0.34, 1.5],
    [0.46, 1.9],
    [0.65, 2.4],
  ],
  bench: [
    [-0.05, 0.95],
    [0, 1],
    [0.08, 0.97],
    [0.16, 1.02],
    [0.26, 1.3],
    [0.36, 1.55],
    [0.5, 1.75],
  ],
  deadlift: [
    [-0.1, 0.9],
    [0, 1],
    [0.12, 1.04],
    [0.24, 1.07],
    [0.36, 1.22],
    [0.5, 1.4],
    [0.65, 1.5],
  ],
};

const MIDDLE_M: Record<Lift, number> = { squat: 0.22, bench: 0.14, deadlift: 0.25 };

/** Strength at `xM` above the free bottom for a start whose bottom lies at `bottomXM`. */
export function strengthAt(
  shape: HeightStrength,
  { way, bottomXM, equipment }: { way: Start['way']; bottomXM: number; equipment: Equipment },
  xM: number,
): number {
  const middleM = MIDDLE_M[shape.lift];
  const bump = Math.max(0, 1 - Math.abs(xM - middleM) / middleM);
  const stop = straightBetween(POINTS[shape.lift], xM / shape.stretch) * Math.exp(shape.middle * bump);
  const fade = Math.max(0, 1 - (xM - bottomXM) / REBOUND_WAY_M);
  const rebound = shape.rebound * keptRebound(shape, way) * fade;
  const help = 1 - (1 - GEAR_LEFT) * Math.min(1, Math.max(0, xM / GEAR_WAY_M));
  return stop * (1 + rebound) * (1 + (equipment === 'raw' ? 0 : shape.gear * help));
}

function keptRebound({ lift, held }: HeightStrength, way: Start['way']): number {
  if (lift === 'deadlift' || way === 'pins') return 0;
  return way === 'free' ? 1 : held;
}

function straightBetween(points: readonly (readonly [number, number])[], x: number): number {
  const above = points.findIndex(([at]) => at >= x);
  const right = above === -1 ? points.length - 1 : Math.max(1, above);
  const [x0, y0] = points[right - 1]!;
  const [x1, y1] = points[right]!;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

import type { CompiledLoad } from '../load/compileLoad.ts';
import { dormandPrinceStep, type MotionState } from '../numeric/dormandPrince.ts';
import { landStep } from '../numeric/landStep.ts';
import type { Capability } from './Capability.ts';
import { accelerationFunction, fullForceFunction } from './pushForce.ts';
import { strengthCurve } from './strengthCurve.ts';

/**
 * Error allowed in one step: of the height (m) and of the speed (m/s). The fine one keeps duration and mean speed right to
 * 1e-6 and better; the coarse one is for the first steps of a search.
 */
export const FINE = 1e-8;
export const COARSE = 1e-4;
/** Kinks, turns and the end are met so near (s) for an error squared: to rounding by the fine one. */
const LANDED_PER_ERROR = 1e4;
/** A first step (s); the error control finds its own from there. */
const FIRST_STEP_S = 1e-2;
/** A step is made so much shorter than its error would have it: of bolder ones every fourth fails. */
const CAUTION = 0.8;
/** No step is shorter or longer than the one before by more. */
const SHORTEST_TIMES = 0.2;
const LONGEST_TIMES = 5;
/** No lifter strains longer: the decline has long taken the force away. */
const LONGEST_S = 120;
/** A rep takes some dozens of steps; one that tries this many is no lift (a bar of a gram under a tonne of push). */
const MOST_STEPS = 100_000;
/** Stands for 'just not zero' in an acceleration. */
const TINY = 1e-300;

/** The way up: the states at the ends of all steps, and how it ended. */
export interface Ascent {
  states: MotionState[];
  made: boolean;
  /** Turning points of the speed, in order, with the last state where the speed still rose or fell there. */
  turns: { kind: 'peak' | 'trough'; state: MotionState }[];
}

/**
 * Solves `M dv/dt = push - M g - T(z) - mu v^2` from rest at the bottom until lockout or standstill, with
 * `M(z) = bar + chain(z) + movedBody`. Steps end exactly on every kink (a band going taut, a chain leaving the
 * floor, the onset of straining), on every turning point of the speed and on the end, so that the order of the
 * scheme is kept. `curve`: the capability's strength curve where it is at hand in a quicker form.
 */
export function ascend(
  compiled: CompiledLoad,
  capability: Capability,
  tolerance: number,
  curve = strengthCurve(capability),
): Ascent {
  const { load } = compiled;
  const { bottomM, lockoutM, gravityMps2 } = load;
  const { strainAfterS } = capability;
  const acceleration = accelerationFunction(compiled, capability, curve);
  let now: MotionState = { t: 0, z: bottomM, v: 0, a: acceleration(0, bottomM, 0) };
  const states = [now];
  const turns: Ascent['turns'] = [];
  // The push may only begin to build up, so that it is what could be pushed that decides whether the bar leaves the bottom.
  const massKg = load.barKg + capability.movedBodyKg + compiled.hangingKg(bottomM);
  const heldN = massKg * gravityMps2 + compiled.bandN(bottomM);
  if (!(fullForceFunction(capability, curve)(0, bottomM, 0) > heldN)) return { states, made: false, turns };

  const stops = [...compiled.breaksM, lockoutM];
  let nextStop = 0;
  let h = FIRST_STEP_S;
  let out = { ...now };
  const tryStep = (size: number) => dormandPrinceStep(acceleration, now, size, out) / tolerance;
  const landOn = (miss: () => number, slope: () => number) =>
    landStep(out.t - now.t, LANDED_PER_ERROR * tolerance ** 2, tryStep, miss, slope);

  for (let tries = 0; now.t < LONGEST_S; tries++) {
    if (tries > MOST_STEPS) throw new RangeError('the bar is too light for these forces to be followed');
    const untilS = now.t < strainAfterS && strainAfterS < LONGEST_S ? strainAfterS : LONGEST_S;
    const isCut = now.t + h > untilS;
    const size = isCut ? untilS - now.t : h;
    const error = tryStep(size);
    if (!(error <= 1)) {
      h = size * timesLonger(error);
      continue;
    }
    const stopM = stops[nextStop]!;
    let ended: 'made' | 'stopped' | null = null;
    let landed = isCut;
    const rising = now.a >= 0;
    if (rising !== out.a >= 0 && out.z < stopM) {
      const rate = Math.abs(out.a - now.a) / size;
      landOn(
        () => (rising ? -out.a : out.a),
        () => rate,
      );
      // Beyond the turn by a hair, so that the next step does not find the same turn again.
      out.a = rising ? Math.min(out.a, -TINY) : Math.max(out.a, TINY);
      turns.push({ kind: rising ? 'peak' : 'trough', state: out });
      landed = true;
    }
    if (out.v <= 0) {
      landOn(
        () => -out.v,
        () => -out.a,
      );
      ended = 'stopped';
    }
    if (out.z >= stopM) {
      landOn(
        () => out.z - stopM,
        () => out.v,
      );
      out.z = stopM;
      out.a = acceleration(out.t, out.z, out.v);
      landed = true;
      nextStop++;
      ended = nextStop === stops.length ? 'made' : null;
    }
    if (!landed) h = size * timesLonger(error);
    now = out;
    states.push(now);
    out = { ...now };
    if (ended !== null) return { states, made: ended === 'made', turns };
  }
  return { states, made: false, turns };
}

/** By how much the next step may be longer, for a method of the fifth order; an error that is no number calls for a far shorter one. */
function timesLonger(error: number): number {
  if (Number.isNaN(error)) return SHORTEST_TIMES;
  // Not by `**`, which takes four times as long.
  const times = CAUTION * Math.exp(-0.2 * Math.log(error));
  return Math.min(LONGEST_TIMES, Math.max(SHORTEST_TIMES, times));
}

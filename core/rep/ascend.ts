import type { CompiledLoad } from '../load/compileLoad.ts';
import { dormandPrinceStep, type MotionState } from '../numeric/dormandPrince.ts';
import type { Capability } from './Capability.ts';
import { pushForceN, strainFactor } from './pushForce.ts';
import { rangeShare, relativeStrength } from './strengthCurve.ts';

/** Errors allowed in one step: of the height relative to the range, of the speed relative to a brisk 1 m/s. */
const TOLERANCE = 1e-9;
/** A first step (s); the error control finds its own from there. */
const FIRST_STEP_S = 1e-3;
/** No lifter strains longer: the decline has long taken the force away. */
const LONGEST_S = 120;
const LANDING_STEPS = 12;
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
 * Solves `M dv/dt = F - M g - T(z) - mu v^2` from rest at the bottom until lockout or standstill, with
 * `M(z) = bar + chain(z) + movedBody`. Steps end exactly on every kink (a band going taut, a chain leaving the
 * floor, the onset of straining), on every turning point of the speed and on the end, so that the order of the
 * scheme is kept. Closed forms hold to 1e-6 and better (tests).
 */
export function ascend(compiled: CompiledLoad, capability: Capability): Ascent {
  const { load } = compiled;
  const { bottomM, lockoutM, gravityMps2 } = load;
  const baseKg = load.barKg + capability.movedBodyKg;
  const hasChains = load.chains.length > 0;
  const acceleration = (t: number, z: number, v: number) => {
    const massKg = hasChains ? baseKg + compiled.hangingKg(z) : baseKg;
    const pickUpN = hasChains ? compiled.liftedPerMetreKg(z) * v * v : 0;
    return (pushForceN(capability, t, z, v) - compiled.bandN(z) - pickUpN) / massKg - gravityMps2;
  };
  let now: MotionState = { t: 0, z: bottomM, v: 0, a: acceleration(0, bottomM, 0) };
  const states = [now];
  const turns: Ascent['turns'] = [];
  if (!(now.a > 0)) return { states, made: false, turns };

  const scaleZ = TOLERANCE * (lockoutM - bottomM);
  const stops = [...compiled.breaksM, lockoutM];
  let nextStop = 0;
  let h = FIRST_STEP_S;
  let out: MotionState = { t: 0, z: 0, v: 0, a: 0 };
  const tryStep = (size: number) => dormandPrinceStep(acceleration, now, size, scaleZ, TOLERANCE, out);
  /** Shortens the step just tried so that it ends where `miss` is zero; `slope` is the rate of `miss` in time. */
  const landOn = (size: number, miss: () => number, slope: () => number) => {
    let low = 0;
    let high = size;
    for (let i = 0; i < LANDING_STEPS; i++) {
      const off = miss();
      if (off > 0) high = size;
      else low = size;
      const newton = size - off / slope();
      const next = newton > low && newton < high ? newton : (low + high) / 2;
      if (Math.abs(next - size) <= 1e-15 * (1 + now.t)) break;
      size = next;
      tryStep(size);
      if (high - low < 1e-14) break;
    }
  };

  while (now.t < LONGEST_S) {
    const beforeStrain = now.t < capability.strainAfterS && now.t + h > capability.strainAfterS;
    const size = beforeStrain ? capability.strainAfterS - now.t : h;
    const error = tryStep(size);
    if (!(error <= 1)) {
      h = size * Math.max(0.2, 0.9 * (error > 0 ? error ** -0.2 : 0.2));
      if (h < 1e-12) return { states, made: false, turns };
      continue;
    }
    const stopM = stops[nextStop]!;
    let ended: 'made' | 'stopped' | null = null;
    let landed = beforeStrain;
    if (now.a > 0 !== out.a > 0 && now.t > 0 && out.z < stopM) {
      const rising = now.a > 0;
      const rate = (out.a - now.a) / size;
      landOn(
        size,
        () => (rising ? -out.a : out.a),
        () => (rising ? -rate : rate),
      );
      // Beyond the turn by a hair, so that the next step does not find the same turn again.
      out.a = rising ? Math.min(out.a, -TINY) : Math.max(out.a, TINY);
      if (out.v > 0) turns.push({ kind: rising ? 'peak' : 'trough', state: out });
      landed = true;
    }
    if (out.v <= 0) {
      landOn(
        out.t - now.t,
        () => -out.v,
        () => -out.a,
      );
      ended = 'stopped';
    }
    if (out.z >= stopM) {
      landOn(
        out.t - now.t,
        () => out.z - stopM,
        () => out.v,
      );
      out.z = stopM;
      out.a = acceleration(out.t, out.z, out.v);
      landed = true;
      nextStop++;
      ended = nextStop === stops.length ? 'made' : null;
    }
    if (!landed) h = size * Math.min(5, Math.max(0.2, 0.9 * (error > 0 ? error ** -0.2 : 5)));
    now = out;
    states.push(now);
    out = { t: 0, z: 0, v: 0, a: 0 };
    if (ended !== null) return { states, made: ended === 'made', turns };
  }
  return { states, made: false, turns };
}

/**
 * How far a rep is from its limit (m^2/s^2), for finding maxima: above 0 the square of the slowest speed of a made
 * rep; below 0 twice the work per moved mass that was lacking where a missed rep stopped.
 */
export function ascentMargin(ascent: Ascent, compiled: CompiledLoad, capability: Capability): number {
  const last = ascent.states[ascent.states.length - 1]!;
  if (ascent.made) {
    const slowest = ascent.turns.reduce(
      (v, turn) => (turn.kind === 'trough' ? Math.min(v, turn.state.v) : v),
      last.v,
    );
    return slowest * slowest;
  }
  return -lackingWork(compiled, capability, last);
}

/** Twice the missing work per mass from the standstill up to where the lifter could hold the bar again. */
function lackingWork(compiled: CompiledLoad, capability: Capability, stop: MotionState): number {
  const { load } = compiled;
  const pieces = 40;
  const stepM = (load.lockoutM - stop.z) / pieces;
  const strain = strainFactor(capability, stop.t);
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const zM = stop.z + (i + 0.5) * stepM;
    const massKg = load.barKg + capability.movedBodyKg + compiled.hangingKg(zM);
    const heldN = capability.strengthN * relativeStrength(capability, rangeShare(capability, zM)) * strain;
    const lack = load.gravityMps2 + (compiled.bandN(zM) - heldN) / massKg;
    if (lack <= 0 && i > 0) break;
    sum += 2 * Math.max(lack, 0) * stepM;
  }
  return Math.max(sum, Number.MIN_VALUE);
}

import type { CompiledLoad } from '../load/compileLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import type { MotionState } from '../numeric/dormandPrince.ts';
import { type Ascent, ascend, FINE } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { accelerationFunction } from './pushForce.ts';
import { rangeShare } from './strengthCurve.ts';

export interface RepSample {
  tS: number;
  /** On the lifter's own full range. */
  s: number;
  zM: number;
  speedMps: number;
  lifterN: number;
  loadN: number;
}

/** One way up. All `s` run over the lifter's own full range. */
export interface Rep {
  made: boolean;
  /** Until lockout, or until the bar stood still. */
  durationS: number;
  meanSpeedMps: number;
  peakSpeedMps: number;
  /**
   * Slowest point after the first peak of speed: the sticking region; a missed rep's standstill; lockout where there is none.
   * An arrival that is eased on purpose does not count as slow.
   */
  slowest: { s: number; zM: number; speedMps: number };
  stoppedAt: { s: number; zM: number; tS: number } | null;
  /** Evenly spaced in time, both ends included. */
  samples: RepSample[];
}

/** Simulates one rep from rest at the bottom (model, section 5). `samples`: 0 for none, else at least 2. */
export function simulateRep(load: Load, capability: Capability, options: { samples?: number } = {}): Rep {
  return repOf(compileLoad(load), capability, options.samples ?? 0);
}

/** The same for a load that is compiled already. */
export function repOf(compiled: CompiledLoad, capability: Capability, samples: number): Rep {
  const ascent = ascend(compiled, capability, FINE);
  const end = ascent.states[ascent.states.length - 1]!;
  const place = (state: MotionState) => ({ s: rangeShare(capability, state.z), zM: state.z });
  const slowest = ascent.made ? slowestOf(ascent, capability.easing > 0) : end;
  return {
    made: ascent.made,
    durationS: end.t,
    meanSpeedMps: end.t === 0 ? 0 : (end.z - compiled.load.bottomM) / end.t,
    peakSpeedMps: ascent.turns.reduce((v, turn) => Math.max(v, turn.state.v), end.v),
    slowest: { ...place(slowest), speedMps: ascent.made ? slowest.v : 0 },
    stoppedAt: ascent.made ? null : { ...place(end), tS: end.t },
    samples: sample(ascent, samples, compiled, capability),
  };
}

/** The deepest trough of speed, or lockout: where there is no trough, and where an arrival that is not eased is slower. */
function slowestOf({ states, turns }: Ascent, eased: boolean): MotionState {
  const end = states[states.length - 1]!;
  const troughs = turns.filter(({ kind }) => kind === 'trough').map(({ state }) => state);
  const slow = eased && troughs.length > 0 ? troughs : [...troughs, end];
  return slow.reduce((slowest, state) => (state.v < slowest.v ? state : slowest));
}

function sample(ascent: Ascent, count: number, compiled: CompiledLoad, capability: Capability): RepSample[] {
  const { states } = ascent;
  const endS = states[states.length - 1]!.t;
  const acceleration = accelerationFunction(compiled, capability);
  const pushN = (tS: number, zM: number, speedMps: number, loadN: number) => {
    const massKg = compiled.load.barKg + capability.movedBodyKg + compiled.hangingKg(zM);
    const bodyN = capability.movedBodyKg * compiled.load.gravityMps2;
    const pickUpN = compiled.liftedPerMetreKg(zM) * speedMps ** 2;
    return massKg * acceleration(tS, zM, speedMps) + loadN + bodyN + pickUpN;
  };
  let step = 0;
  return Array.from({ length: count }, (_, i) => {
    const tS = (endS * i) / (count - 1);
    while ((states[step + 1]?.t ?? Number.POSITIVE_INFINITY) < tS) step++;
    const { zM, speedMps } = between(states[step]!, states[step + 1] ?? states[step]!, tS);
    const loadN = compiled.totalN(zM);
    return {
      tS,
      s: rangeShare(capability, zM),
      zM,
      speedMps,
      lifterN: pushN(tS, zM, speedMps, loadN),
      loadN,
    };
  });
}

/** Height by the quintic through height, speed and acceleration at both ends of a step; speed by its derivative. */
function between(low: MotionState, high: MotionState, tS: number): { zM: number; speedMps: number } {
  const h = high.t - low.t;
  if (h === 0) return { zM: low.z, speedMps: low.v };
  const x = (tS - low.t) / h;
  const rise = high.z - low.z - h * low.v - (h * h * low.a) / 2;
  const gain = h * (high.v - low.v) - h * h * low.a;
  const bend = h * h * (high.a - low.a);
  const c3 = 10 * rise - 4 * gain + bend / 2;
  const c4 = -15 * rise + 7 * gain - bend;
  const c5 = 6 * rise - 3 * gain + bend / 2;
  return {
    zM: low.z + x * (h * low.v + x * ((h * h * low.a) / 2 + x * (c3 + x * (c4 + x * c5)))),
    speedMps: Math.max(0, low.v + x * (h * low.a + (x * (3 * c3 + x * (4 * c4 + x * 5 * c5))) / h)),
  };
}

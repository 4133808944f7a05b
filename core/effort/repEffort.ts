import type { CompiledLoad } from '../load/compileLoad.ts';
import type { MotionState } from '../numeric/dormandPrince.ts';
import type { Ascent } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import { heldForceFunction, strengthCurve } from '../rep/strengthCurve.ts';

/**
 * What one rep asks of a lifter, in seconds of full effort: the share of strength in use, integrated over the time of
 * the way up and of a way down at even speed.
 *
 *   effort = integral of share(z(t)) dt + loweringS x mean of share over the range,
 *   share(z) = min(1, (Load(z) + movedBody g) / (S g(s)))
 *
 * The share is what is carried over what could just be held there, not the momentary push: a lifter who moves a light
 * bar as fast as possible pushes with all they have for an instant, yet is tired by the weight and by the time under
 * it. So a light, fast rep costs little and a grinding one much. No share counts above 1: more than everything cannot
 * be given, and what is above it for an instant is rebound. Bar and moved body enter through their sum only.
 */
export function repEffortS(
  compiled: CompiledLoad,
  capability: Capability,
  ascent: Ascent,
  loweringS: number,
  curve = strengthCurve(capability),
): number {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const bodyN = capability.movedBodyKg * gravityMps2;
  const heldN = heldForceFunction(capability, curve);
  const share = (zM: number) => Math.min(1, (compiled.totalN(zM) + bodyN) / heldN(zM));
  return upward(ascent.states, share) + loweringS * meanShare(share, bottomM, lockoutM);
}

/** Even pieces of the range for the mean on the way down: tiring is not known well enough for more. */
const PIECES = 6;

/** Simpson's rule over even pieces. */
function meanShare(share: (zM: number) => number, bottomM: number, lockoutM: number): number {
  const pieceM = (lockoutM - bottomM) / PIECES;
  let sum = 0;
  for (let i = 0; i < PIECES; i++) {
    const zM = bottomM + i * pieceM;
    sum += share(zM) + 4 * share(zM + pieceM / 2) + share(zM + pieceM);
  }
  return sum / (6 * PIECES);
}

/** Simpson's rule over each step, with the height at its middle by the cubic through both ends. */
function upward(states: readonly MotionState[], share: (zM: number) => number): number {
  let sum = 0;
  let before = share(states[0]!.z);
  for (let i = 1; i < states.length; i++) {
    const low = states[i - 1]!;
    const high = states[i]!;
    const h = high.t - low.t;
    const after = share(high.z);
    const middle = share((low.z + high.z) / 2 + (h * (low.v - high.v)) / 8);
    sum += (h / 6) * (before + 4 * middle + after);
    before = after;
  }
  return sum;
}

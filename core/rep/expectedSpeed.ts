import type { CompiledLoad } from '../load/compileLoad.ts';
import { findLimit } from '../numeric/findLimit.ts';
import type { LnRatio, Newton, Share } from '../numeric/quantity.ts';
import { ascend, COARSE } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { STRONGEST_N, strengthGuessN } from './limitGuess.ts';
import { type Rep, repOf } from './simulateRep.ts';
import { strengthCurve } from './strengthCurve.ts';

/**
 * What a lifter's measured mean speeds are beyond the model's: `offset + perSurplus u`, with u the surplus
 * `ln(S / S_limit)` up to `upToLn`, beyond which nothing was learned (model, "strength").
 */
export interface SpeedCorrection {
  offsetMps: number;
  perSurplusMps: number;
  upToLn: LnRatio;
}

/** A bar that moves at all is not expected slower than this (m/s). */
const SLOWEST_MPS = 0.01;
/** The limit is known no nearer: a rep within this of it is worked out as one this far on its own side. */
const CLEAR_LN = 2e-3;

/** Mean speed (m/s) to expect of a made rep that the model gives `modelMps`, at a surplus of strength. */
export function expectedMps(
  modelMps: number,
  surplusLn: LnRatio,
  { offsetMps, perSurplusMps, upToLn }: SpeedCorrection,
): number {
  return Math.max(SLOWEST_MPS, modelMps + offsetMps + perSurplusMps * countedLn(surplusLn, upToLn));
}

/** As much of a surplus as counts in a correction. */
export function countedLn(surplusLn: LnRatio, upToLn: LnRatio): number {
  return Math.min(Math.max(0, surplusLn), upToLn);
}

/** Where a search for a limit begins: at so large a share of the first guess, with what first step and to what end, relative. */
export interface LimitStart {
  share: Share;
  step: number;
  tolerance: number;
}

/** Not knowing anything of a like load: the guess is seldom further off. */
export const FRESH: LimitStart = { share: 1, step: 0.04, tolerance: 2e-4 };

/**
 * The strength (N) that just makes a load, to 2e-4 of itself; null where none does, since it takes longer than anybody can
 * strain. It depends on the load and the capability's shape alone, not on its strength. `curve`: the capability's strength
 * curve where it is at hand in a quicker form.
 */
export function limitStrengthN(
  compiled: CompiledLoad,
  capability: Capability,
  curve = strengthCurve(capability),
): number | null {
  return limitFrom(FRESH, compiled, capability, curve)?.limitN ?? null;
}

/**
 * The same from a given start, with the share of the first guess that the limit is: a start for like loads. The push is not
 * eased: that moves the limit by less than a ten-thousandth and takes more steps.
 */
export function limitFrom(
  { share, step, tolerance }: LimitStart,
  compiled: CompiledLoad,
  capability: Capability,
  curve: (zM: number) => number,
): { limitN: Newton; share: Share } | null {
  const guess = strengthGuessN(compiled, capability);
  const isMissed = (strengthN: Newton) =>
    !ascend(compiled, { ...capability, easing: 0, strengthN }, COARSE, curve).made;
  const limit = findLimit(isMissed, {
    guess: share * guess,
    step: step * guess,
    tolerance: tolerance * guess,
    lowest: 0,
    highest: STRONGEST_N,
  });
  return limit && { limitN: limit.above, share: limit.above / guess };
}

/** The strength (N) to work a rep out with that has so much to spare: off the limit, so that it is surely made from 0 on. */
export function clearStrengthN(limitN: Newton, surplusLn: LnRatio): number {
  return limitN * Math.exp(surplusLn < 0 ? Math.min(surplusLn, -CLEAR_LN) : Math.max(surplusLn, CLEAR_LN));
}

/**
 * A rep in the time that is to be expected of this lifter: every speed by the same factor, so that the mean is right.
 * Without a correction the model's own rep. `samples`: 0 for none, else at least 2.
 */
export function expectedRep(
  compiled: CompiledLoad,
  capability: Capability,
  samples: number,
  correction: SpeedCorrection | undefined,
): Rep {
  const limitN = correction === undefined ? null : limitStrengthN(compiled, capability);
  if (correction === undefined || limitN === null) return repOf(compiled, capability, samples);
  const surplusLn = Math.log(capability.strengthN / limitN);
  const rep = repOf(compiled, { ...capability, strengthN: clearStrengthN(limitN, surplusLn) }, samples);
  if (!rep.made) return rep;
  const meanSpeedMps = expectedMps(rep.meanSpeedMps, surplusLn, correction);
  const faster = meanSpeedMps / rep.meanSpeedMps;
  return {
    ...rep,
    meanSpeedMps,
    durationS: rep.durationS / faster,
    peakSpeedMps: rep.peakSpeedMps * faster,
    slowest: { ...rep.slowest, speedMps: rep.slowest.speedMps * faster },
    samples: rep.samples.map((at) => ({ ...at, tS: at.tS / faster, speedMps: at.speedMps * faster })),
  };
}

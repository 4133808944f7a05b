import type { CompiledLoad } from '../load/compileLoad.ts';
import type { Capability } from './Capability.ts';
import { heldForceFunction } from './strengthCurve.ts';

/** Heights looked at. */
const PLACES = 16;
/** A maximal rep crosses its worst height at about a tenth of the lifter's top speed, half a second in. */
const SLOW_SHARE = 0.1;
const CROSSING_S = 0.5;

/** What is at hand and what is asked for at the heights where a maximal rep may fail; a start for searches. */
export function limitPlaces(
  compiled: CompiledLoad,
  capability: Capability,
): { pushN: number; otherN: number }[] {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const heldN = heldForceFunction(capability);
  return Array.from({ length: PLACES }, (_, i) => {
    const tS = (2 * CROSSING_S * i) / PLACES;
    const zM = bottomM + ((lockoutM - bottomM) * i) / (PLACES - 1);
    const strain = 1 + capability.rebound * Math.exp(-tS / capability.reboundTimeS);
    return {
      pushN: heldN(zM) * (1 - SLOW_SHARE) * strain,
      otherN: compiled.bandN(zM) + (compiled.hangingKg(zM) + capability.movedBodyKg) * gravityMps2,
    };
  });
}

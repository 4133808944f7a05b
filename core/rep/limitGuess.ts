import type { CompiledLoad } from '../load/compileLoad.ts';
import type { Kg, Newton } from '../numeric/quantity.ts';
import type { Capability } from './Capability.ts';
import { heldForceFunction } from './strengthCurve.ts';

/** Heights looked at. */
const PLACES = 16;
/** A maximal rep crosses its worst height at about a tenth of the lifter's top speed, and is up in about a second. */
const SLOW_SHARE = 0.1;
const SLOW_S = 1;

/** A search beyond a hundred tonnes of force means that it is speed, not strength, that lacks. */
export const STRONGEST_N = 1e6;

/** About the strength (N) that just makes a load, within an eighth for usual lifters; at least 1 N. A start for searches. */
export function strengthGuessN(compiled: CompiledLoad, capability: Capability): Newton {
  const weightN = compiled.load.barKg * compiled.load.gravityMps2;
  const places = limitPlaces(compiled, { ...capability, strengthN: 1 });
  return Math.max(1, ...places.map(({ pushN, otherN }) => (otherN + weightN) / pushN));
}

/** About the heaviest bar (kg) that goes up, to an eighth of all that moves; below nought where nothing does. A start for searches. */
export function barGuessKg(compiled: CompiledLoad, capability: Capability): Kg {
  const sparesN = limitPlaces(compiled, capability).map(({ pushN, otherN }) => pushN - otherN);
  return Math.min(...sparesN) / compiled.load.gravityMps2;
}

/** What is at hand and what is asked for beside the bar at the heights where a maximal rep may fail. */
function limitPlaces(compiled: CompiledLoad, capability: Capability): { pushN: Newton; otherN: Newton }[] {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const heldN = heldForceFunction(capability);
  return Array.from({ length: PLACES }, (_, i) => {
    const share = i / (PLACES - 1);
    const zM = bottomM + share * (lockoutM - bottomM);
    const strain = 1 + capability.rebound * Math.exp((-share * SLOW_S) / capability.reboundTimeS);
    return {
      pushN: heldN(zM) * (1 - SLOW_SHARE) * strain,
      otherN: compiled.bandN(zM) + (compiled.hangingKg(zM) + capability.movedBodyKg) * gravityMps2,
    };
  });
}

import type { Chain } from './Rig.ts';

/**
 * Mass of chain (kg) that hangs from the bar at height `zM`: `mu * clamp(z - attach, 0, L)` for each of `count`;
 * the rest lies on the floor. Geometry, chains hanging straight down.
 */
export function hangingKg(chain: Chain, zM: number): number {
  return (
    chain.count * chain.massPerMetreKg * Math.min(Math.max(zM - chain.attachBelowBarM, 0), chain.lengthM)
  );
}

/**
 * Mass per metre of rise (kg/m) that is being picked up from the floor at height `zM`: links jerked from rest add
 * `mu v^2` on the way up (momentum balance of a chain lifted out of a heap).
 */
export function liftedPerMetreKg(chain: Chain, zM: number): number {
  const hangingM = zM - chain.attachBelowBarM;
  return hangingM >= 0 && hangingM < chain.lengthM ? chain.count * chain.massPerMetreKg : 0;
}

/** Heights at which a chain begins to lift and at which its last link leaves the floor. */
export function chainBreaksM(chain: Chain): number[] {
  return [chain.attachBelowBarM, chain.attachBelowBarM + chain.lengthM];
}

import type { Load } from './Load.ts';
import { STANDARD_GRAVITY_MPS2 } from './localGravity.ts';

/** A way straight up with no bands and no chains, at standard gravity; what is on the bar is still to be said. */
export function bareLoad(bottomM: number, lockoutM: number): Omit<Load, 'barKg'> {
  return {
    bands: [],
    hungBands: [],
    chains: [],
    bottomM,
    lockoutM,
    gravityMps2: STANDARD_GRAVITY_MPS2,
    path: [],
  };
}

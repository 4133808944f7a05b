import type { Kg } from '../numeric/quantity.ts';
import type { Chain, HungBand, RiggedBand } from '../rig/Rig.ts';

/** All that the lifter moves from `bottomM` to `lockoutM` (bar centre above the floor). */
export interface Load {
  /** Bar, discs and collars. */
  barKg: Kg;
  bands: readonly RiggedBand[];
  hungBands: readonly HungBand[];
  chains: readonly Chain[];
  bottomM: number;
  lockoutM: number;
  gravityMps2: number;
  /** Fore-aft bar position by height, linear between, constant outside; empty: straight up at x = 0. */
  path: readonly { zM: number; xM: number }[];
}

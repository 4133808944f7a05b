import { compileLoad, withBarKg } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { findRoot } from '../numeric/findRoot.ts';
import { ascend, ascentMargin } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { pushForceN } from './pushForce.ts';
import { repOf } from './simulateRep.ts';

/** Bar masses are found to a gram: finer than any disc. */
const TOLERANCE_KG = 1e-3;
/** The lightest bar looked at; a bar without mass would have no motion of its own. */
const LIGHTEST_KG = 0.5;

export interface MaxBar {
  barKg: number;
  bottomN: number;
  lockoutN: number;
  slowest: { s: number; speedMps: number };
}

/**
 * The heaviest bar (bar, discs and collars) that the lifter can take to lockout with these bands and chains, to
 * 0.001 kg on the safe side; `load.barKg` is ignored. Null where not even half a kilogram goes up.
 */
export function maxBar(load: Load, capability: Capability): MaxBar | null {
  const compiled = compileLoad(load);
  const margin = (barKg: number) => {
    const bar = withBarKg(compiled, barKg);
    return ascentMargin(ascend(bar, capability), bar, capability);
  };
  // Even this bar would not leave the bottom.
  const { bottomM, gravityMps2 } = load;
  const startN = pushForceN(capability, 0, bottomM, 0) - compiled.bandN(bottomM);
  const tooHeavyKg = startN / gravityMps2 - capability.movedBodyKg - compiled.hangingKg(bottomM);
  if (tooHeavyKg <= LIGHTEST_KG) return null;
  const lightestMargin = margin(LIGHTEST_KG);
  if (lightestMargin <= 0) return null;
  const { a: barKg } = findRoot(
    margin,
    LIGHTEST_KG,
    lightestMargin,
    tooHeavyKg,
    margin(tooHeavyKg),
    TOLERANCE_KG,
  );
  const heaviest = withBarKg(compiled, barKg);
  const { slowest } = repOf(heaviest, capability, 0);
  return {
    barKg,
    bottomN: heaviest.at(bottomM).totalN,
    lockoutN: heaviest.at(load.lockoutM).totalN,
    slowest: { s: slowest.s, speedMps: slowest.speedMps },
  };
}

import { compileLoad, withBarKg } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import type { Kg, Newton } from '../numeric/quantity.ts';
import { ascend } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { barGuessKg } from './limitGuess.ts';
import { nearThenFine } from './nearThenFine.ts';
import { repOf } from './simulateRep.ts';

/** Bar masses are found to a few grams: finer than any disc. */
const TOLERANCE_KG = 5e-3;
/** The first step of the search: about as far as its guess is off. */
const FIRST_STEP_KG = 8;
/** A bar without mass would have no motion of its own; one of ten tonnes has no lifter. */
const LIGHTEST_KG = 0.5;
const HEAVIEST_KG = 10_000;

export interface MaxBar {
  barKg: Kg;
  bottomN: Newton;
  lockoutN: Newton;
  slowest: { s: number; speedMps: number };
}

/**
 * The heaviest bar (bar, discs and collars) that the lifter can take to lockout with these bands and chains, to
 * 0.005 kg on the safe side; `load.barKg` is ignored. Null where not even half a kilogram goes up.
 */
export function maxBar(load: Load, capability: Capability): MaxBar | null {
  const compiled = compileLoad(load);
  const isMade = (barKg: Kg, tolerance: number) =>
    ascend(withBarKg(compiled, barKg), capability, tolerance).made;
  const limit = nearThenFine(isMade, {
    guess: barGuessKg(compiled, capability),
    step: FIRST_STEP_KG,
    tolerance: TOLERANCE_KG,
    lowest: LIGHTEST_KG,
    highest: HEAVIEST_KG,
  });
  if (limit === null) return null;
  const heaviest = withBarKg(compiled, limit.below);
  const { slowest } = repOf(heaviest, capability, 0);
  return {
    barKg: limit.below,
    bottomN: heaviest.at(load.bottomM).totalN,
    lockoutN: heaviest.at(load.lockoutM).totalN,
    slowest: { s: slowest.s, speedMps: slowest.speedMps },
  };
}

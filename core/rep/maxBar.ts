import { compileLoad, withBarKg } from '../load/compileLoad.ts';
import type { Load } from '../load/Load.ts';
import { findLimit } from '../numeric/findLimit.ts';
import type { Kg, Newton } from '../numeric/quantity.ts';
import { ascend, COARSE, FINE } from './ascend.ts';
import type { Capability } from './Capability.ts';
import { limitPlaces } from './limitGuess.ts';
import { repOf } from './simulateRep.ts';

/** Bar masses are found to a few grams: finer than any disc. */
const TOLERANCE_KG = 5e-3;
/** The coarse search ends here, and the fine one starts with it as its step. */
const COARSE_KG = 0.01;
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
  const made = (barKg: Kg, tolerance: number) =>
    ascend(withBarKg(compiled, barKg), capability, tolerance).made;
  const guesses = limitPlaces(compiled, capability).map(
    ({ pushN, otherN }) => (pushN - otherN) / load.gravityMps2,
  );
  const guess = Math.min(...guesses);
  const range = { lowest: LIGHTEST_KG, highest: HEAVIEST_KG };
  const near = findLimit((barKg) => made(barKg, COARSE), {
    ...range,
    guess,
    step: Math.max(0.04 * guess, 2),
    tolerance: COARSE_KG,
  });
  const limit = findLimit((barKg) => made(barKg, FINE), {
    ...range,
    guess: near?.below ?? LIGHTEST_KG,
    step: COARSE_KG,
    tolerance: TOLERANCE_KG,
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

import type { CompiledLoad } from '../load/compileLoad.ts';
import { findLimit } from '../numeric/findLimit.ts';
import { monotoneCurve } from '../numeric/monotoneCurve.ts';
import { ascend, COARSE } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import { repEffortS } from './repEffort.ts';

/**
 * One load in the hands of one lifter, fresh or tired, without simulating every rep. Tiredness lowers strength S and
 * nothing else, so a rep depends on the surplus `u = ln(S / S_limit)` alone, where `S_limit` just makes it.
 */
export interface RepTable {
  compiled: CompiledLoad;
  /** Rested. */
  capability: Capability;
  limitN: number;
  /** Surplus of the rested lifter; negative: not even one rep. */
  restedLn: number;
  /** Time of the way up and effort of a made rep at a surplus from 0. */
  durationS: (surplusLn: number) => number;
  effortS: (surplusLn: number) => number;
}

/** Places in the table, even in the root of the surplus: near its limit a rep changes like a root. */
const PLACES = 9;
/** A hair above the limit stands for the limit itself. */
const JUST_ABOVE_LN = 1e-4;
/** The table reaches at least so far, for lifters who would need more strength than they have. */
const LEAST_REACH_LN = 0.4;
/** Relative precision of the limit: a tenth of a per cent of a maximum. */
const TOLERANCE = 2e-4;

/**
 * Null where no strength makes the rep, since it takes longer than anybody can strain. `guessN`: the limit of a load
 * that is much the same.
 */
export function repTable(
  compiled: CompiledLoad,
  capability: Capability,
  loweringS: number,
  guessN = capability.strengthN,
): RepTable | null {
  const { strengthN } = capability;
  const limit = findLimit((tryN) => !ascend(compiled, { ...capability, strengthN: tryN }, COARSE).made, {
    guess: guessN,
    step: 0.08 * guessN,
    tolerance: TOLERANCE * guessN,
    lowest: 0,
    highest: 20 * strengthN,
  });
  if (limit === null) return null;
  const limitN = limit.above;
  const restedLn = Math.log(strengthN / limitN);
  const reach = Math.sqrt(Math.max(restedLn, LEAST_REACH_LN));
  const roots = Array.from({ length: PLACES }, (_, i) => (reach * i) / (PLACES - 1));
  const reps = roots.map((root) => {
    const stronger = { ...capability, strengthN: limitN * Math.exp(Math.max(JUST_ABOVE_LN, root * root)) };
    const ascent = ascend(compiled, stronger, COARSE);
    return {
      durationS: ascent.states[ascent.states.length - 1]!.t,
      effortS: repEffortS(compiled, stronger, ascent, loweringS),
    };
  });
  const over = (values: number[]) => {
    const curve = monotoneCurve(roots, values);
    return (surplusLn: number) => curve.at(Math.min(Math.sqrt(Math.max(0, surplusLn)), reach));
  };
  return {
    compiled,
    capability,
    limitN,
    restedLn,
    durationS: over(reps.map((rep) => rep.durationS)),
    effortS: over(reps.map((rep) => rep.effortS)),
  };
}

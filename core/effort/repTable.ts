import type { CompiledLoad } from '../load/compileLoad.ts';
import { meanBodyShare } from '../load/meanBodyShare.ts';
import { monotoneCurve } from '../numeric/monotoneCurve.ts';
import { ascend, COARSE } from '../rep/ascend.ts';
import type { Capability } from '../rep/Capability.ts';
import { limitStrengthN } from '../rep/expectedSpeed.ts';
import { strengthCurve } from '../rep/strengthCurve.ts';
import { barPart } from './barPart.ts';
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
  /** Time of the way up of a made rep at a surplus from 0, and its effort as far as it tires: see `barPart`. */
  durationS: (surplusLn: number) => number;
  effortS: (surplusLn: number) => number;
}

/** Places in the table, even in the root of the surplus: near its limit a rep changes like a root. */
const PLACES = 9;
/** A hair above the limit stands for the limit itself. */
const JUST_ABOVE_LN = 2.5e-4;
/** The table reaches at least so far, for lifters who would need more strength than they have. */
const LEAST_REACH_LN = 0.4;

/**
 * Null where no strength makes the rep, since it takes longer than anybody can strain. `curve`: the capability's strength
 * curve where it is at hand in a quicker form.
 */
export function repTable(
  compiled: CompiledLoad,
  capability: Capability,
  loweringS: number,
  curve = strengthCurve(capability),
): RepTable | null {
  const { strengthN } = capability;
  const limitN = limitStrengthN(compiled, capability, curve);
  if (limitN === null) return null;
  const restedLn = Math.log(strengthN / limitN);
  const reach = Math.sqrt(Math.max(restedLn, LEAST_REACH_LN));
  const roots = Array.from({ length: PLACES }, (_, i) => (reach * i) / (PLACES - 1));
  const bodyShare = meanBodyShare(compiled, capability.movedBodyKg);
  const reps = roots.map((root) => {
    const stronger = { ...capability, strengthN: limitN * Math.exp(Math.max(JUST_ABOVE_LN, root * root)) };
    const ascent = ascend(compiled, stronger, COARSE, curve);
    return {
      durationS: ascent.states[ascent.states.length - 1]!.t,
      effortS: barPart(bodyShare, root * root) * repEffortS(compiled, stronger, ascent, loweringS, curve),
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

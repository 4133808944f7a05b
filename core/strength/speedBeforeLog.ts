import type { Lift } from '../lifter/populationShape.ts';
import { type CompiledLoad, withBarKg } from '../load/compileLoad.ts';
import { meanBandShare } from '../load/meanBandShare.ts';
import type { Capability } from '../rep/Capability.ts';
import {
  clearStrengthN,
  countedLn,
  expectedMps,
  limitStrengthN,
  type SpeedCorrection,
} from '../rep/expectedSpeed.ts';
import { repOf } from '../rep/simulateRep.ts';
import { populationPrior } from './parameters.ts';

/** How well the speed of a rep is known where no log tells it. */
export interface SpeedSpread {
  /** By how much it changes (m/s) with each unit of ln strength. */
  perLnMps: number;
  sdMps: number;
}

/** Half of the stretch of ln strength over which the change is taken. */
const HALF_STEP_LN = 0.02;

/**
 * From how lifters differ: what their measured speeds are beyond the model's, their top speed, slope and rebound at the same
 * surplus of strength, and a strength (`strengthSdLn`) that one best or body mass tells, with bands less well. Each by itself,
 * straight, added in squares. Null where no strength makes the rep.
 */
export function speedBeforeLog(
  lift: Lift,
  compiled: CompiledLoad,
  capability: Capability,
  correction: SpeedCorrection,
  strengthSdLn: number,
): SpeedSpread | null {
  const limitN = limitStrengthN(compiled, capability);
  if (limitN === null) return null;
  const { sd } = populationPrior(lift);
  const surplusLn = Math.log(capability.strengthN / limitN);
  const mpsOf = (shape: Capability, ownLimitN: number, spareLn: number) =>
    repOf(compiled, { ...shape, strengthN: clearStrengthN(ownLimitN, spareLn) }, 0).meanSpeedMps;
  const expected = (spareLn: number) => expectedMps(mpsOf(capability, limitN, spareLn), spareLn, correction);
  const [weakerLn, strongerLn] = [
    Math.max(0, surplusLn - HALF_STEP_LN),
    Math.max(0, surplusLn) + HALF_STEP_LN,
  ];
  const perLnMps = (expected(strongerLn) - expected(weakerLn)) / (strongerLn - weakerLn);
  const modelMps = mpsOf(capability, limitN, surplusLn);
  const shiftedBy = (change: Partial<Capability>) => {
    const other = { ...capability, ...change };
    const ownLimitN = limitStrengthN(compiled, other);
    return ownLimitN === null ? 0 : mpsOf(other, ownLimitN, surplusLn) - modelMps;
  };
  const bandShare = meanBandShare(withBarKg(compiled, compiled.load.barKg + capability.movedBodyKg));
  return {
    perLnMps,
    sdMps: Math.hypot(
      sd.speedOffset,
      sd.speedSlope * countedLn(surplusLn, correction.upToLn),
      shiftedBy({ maxSpeedMps: capability.maxSpeedMps * Math.exp(sd.lnMaxSpeed) }),
      shiftedBy({ slope: capability.slope + sd.slope }),
      shiftedBy({ rebound: capability.rebound * Math.exp(sd.lnRebound) }),
      perLnMps * Math.hypot(strengthSdLn, sd.bandError * bandShare),
    ),
  };
}

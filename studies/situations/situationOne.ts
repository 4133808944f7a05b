import type { Lift } from '#core/lifter/populationShape.ts';
import { beliefOfMixture } from '#core/strength/belief.ts';
import { estimateStrength } from '#core/strength/estimateStrength.ts';
import { asTold } from '#core/strength/modelError.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import type { ModelName } from './otherModels.ts';
import { type Situation, situationLog } from './situationLog.ts';

export interface SituationAsked {
  situation: Situation;
  model: ModelName;
  lift: Lift;
  seed: number;
}

/** What was believed of one simulated lifter (kg on the bar), beside the truth. */
export interface SituationResult extends SituationAsked {
  truthKg: number;
  medianKg: number;
  low80Kg: number;
  high80Kg: number;
  isIn80: boolean;
  isIn95: boolean;
}

export function situationOne(asked: SituationAsked): SituationResult {
  const { situation, model, lift, seed } = asked;
  const { movedBodyKg, truthKg, ...log } = situationLog(situation, model, lift, seed);
  const posterior = estimateStrength({ ...log, prior: populationPrior(lift) });
  const kg = beliefOfMixture(asTold(posterior), (lnTotal) => Math.max(1, Math.exp(lnTotal) - movedBodyKg));
  return {
    ...asked,
    truthKg,
    medianKg: kg.median,
    low80Kg: kg.low80,
    high80Kg: kg.high80,
    isIn80: kg.low80 <= truthKg && truthKg <= kg.high80,
    isIn95: kg.low95 <= truthKg && truthKg <= kg.high95,
  };
}

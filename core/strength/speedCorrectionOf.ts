import type { SpeedCorrection } from '../rep/expectedSpeed.ts';
import type { Parameters } from './parameters.ts';
import { FARTHEST_SURPLUS } from './response.ts';

/** What was learned of a lifter's measured speeds beside the model, as far as surpluses are tabulated. */
export function speedCorrectionOf({
  speedOffset,
  speedSlope,
}: Pick<Parameters, 'speedOffset' | 'speedSlope'>): SpeedCorrection {
  return { offsetMps: speedOffset, perSurplusMps: speedSlope, upToLn: FARTHEST_SURPLUS };
}

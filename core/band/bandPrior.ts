import type { BandCurve, Direction } from './BandCurve.ts';

/** How loops of one nominal size scatter about the curve of their width, as ln of the force (judgement, see below). */
export const WIDTH_SD_LN = 0.25;

/**
 * Curve of a loop that nobody has hung from a scale, from its width alone.
 *
 * Shape and level: Yeoh's form fitted to the tension data of isoprene rubber of Kawabata, Matsuda, Tei & Kawai 1981,
 * Macromolecules 14:154-162 (stretch 1.04 to 3.7, worst misfit 6.4 %). Two legs of `width x thickness` carry it.
 * Thickness: assumption, the common trade size. Level spread: judgement; compounds differ, and bands of one nominal
 * size differ by 8 to 19 % in mean tension alone (McMaster, Cronin & McGuigan 2010, J Strength Cond Res 24:2056-2064).
 */
export function bandPrior(restLengthM: number, widthMm: number, direction: Direction): BandCurve {
  const sectionM2 = LEGS * (widthMm / 1000) * THICKNESS_M;
  return {
    model: 'prior',
    parameters: KAWABATA_YEOH_PA.map((c) => c * sectionM2),
    parameterNames: ['c10N', 'c20N', 'c30N'],
    covariance: [[WIDTH_SD_LN ** 2]],
    restLengthM,
    measuredToM: restLengthM,
    known: 'notMeasured',
    direction,
    residualScale: 1,
    degreesOfFreedom: 0,
  };
}

/** C10, C20, C30 (Pa). */
const KAWABATA_YEOH_PA: readonly number[] = [0.19096e6, -0.0052289e6, 0.00022074e6];
const LEGS = 2;
const THICKNESS_M = 0.0045;

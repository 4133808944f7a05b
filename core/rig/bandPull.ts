import type { BandCurve } from '../band/BandCurve.ts';
import { bandTensionInterval } from '../band/bandTension.ts';
import { tensionFunction } from '../band/tensionFunction.ts';
import {
  type BarPath,
  barX,
  heightsAtPathLength,
  loopPerPath,
  pathLengthM,
  pullsPerLoop,
} from './bandPath.ts';
import type { RiggedBand } from './Rig.ts';

/** Pull of a band set at bar heights; vertical + down, fore-aft + pulls the lifter forward. Sums over `count`. */
export interface BandPull {
  downN(zM: number): number;
  foreAftN(zM: number): number;
  /**
   * Standard deviation of `downN`, from the fit of the curve and from where a choked band begins to pull; the `count` bands
   * share both errors.
   */
  downSdN(zM: number): number;
  /** Tension in one loop's hookup, along its path: what one anchor point carries. */
  anchorN(zM: number): number;
  /** Stretch ratio of the loop. */
  stretch(zM: number): number;
  /** Whether the curve is used beyond its longest reading here. */
  extrapolated(zM: number): boolean;
  /** Heights in the range where the band goes slack or taut. */
  breaksM: number[];
}

/**
 * How well it is known what a choke uses up of the loop (standard deviation, m): one length is written down for a hookup, while wide
 * bands bunch up more than narrow ones and each is pulled tight by hand. Assumption; a pull read on a scale needs none.
 */
const CHOKE_SD_M = 0.02;

/**
 * Geometry of one hookup on one bar path (model, section 2).
 *
 *   T_v = T (z - z_a) / l,  T_h = T (x_a - x_b) / l,  T = pullsPerLoop * F(loopPerPath * l)
 *
 * On the way up a band below the bar lengthens (loading curve) and one above it shortens (unloading curve).
 */
export function bandPull(band: RiggedBand, path: BarPath, fromM: number, toM: number): BandPull {
  const { anchor, hookup, count } = band;
  const restLengthM = band.curves.loading.restLengthM;
  const perPath = loopPerPath(hookup, restLengthM);
  const pulls = pullsPerLoop(hookup);
  const loading = tensionFunction(band.curves.loading);
  const unloading = tensionFunction(band.curves.unloading);
  const lengthAt = (zM: number) => pathLengthM(anchor, barX(path, zM), zM);
  const curveAt = (zM: number): BandCurve => (zM < anchor.zM ? band.curves.unloading : band.curves.loading);
  const pullAt = (zM: number, lengthM: number) =>
    pulls * (zM < anchor.zM ? unloading : loading)(perPath * lengthM);
  const straightUp = path.length === 0;
  const sideSq = anchor.yM ** 2 + anchor.xM ** 2;

  return {
    downN(zM) {
      const rise = zM - anchor.zM;
      const lengthM = straightUp ? Math.sqrt(sideSq + rise * rise) : lengthAt(zM);
      const tensionN = pullAt(zM, lengthM);
      return tensionN === 0 ? 0 : (count * tensionN * rise) / lengthM;
    },
    foreAftN(zM) {
      const lengthM = lengthAt(zM);
      const tensionN = pullAt(zM, lengthM);
      return tensionN === 0 ? 0 : (count * tensionN * (anchor.xM - barX(path, zM))) / lengthM;
    },
    downSdN(zM) {
      const lengthM = lengthAt(zM);
      const loopM = perPath * lengthM;
      const byCurveN = loopM > restLengthM ? pulls * bandTensionInterval(curveAt(zM), loopM).sdN : 0;
      // As wide as what is not known of it, so that a band going taut within is felt.
      const chokeM = hookup.way === 'choked' ? (CHOKE_SD_M * loopM) / restLengthM : 0;
      const byChokeN = (pullAt(zM, lengthM + chokeM) - pullAt(zM, lengthM - chokeM)) / 2;
      return Math.abs((count * Math.hypot(byCurveN, byChokeN) * (zM - anchor.zM)) / lengthM);
    },
    anchorN: (zM) => pullAt(zM, lengthAt(zM)),
    stretch: (zM) => (perPath * lengthAt(zM)) / restLengthM,
    extrapolated(zM) {
      const loopM = perPath * lengthAt(zM);
      return loopM > restLengthM && loopM > curveAt(zM).measuredToM;
    },
    breaksM: heightsAtPathLength(anchor, path, restLengthM / perPath, fromM, toM),
  };
}

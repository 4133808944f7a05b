import { normalCdf, normalDensity } from '#core/numeric/normal.ts';
import type { Kg } from '#core/numeric/quantity.ts';
import type { Capability } from '#core/rep/Capability.ts';
import type { SpeedCorrection } from '#core/rep/expectedSpeed.ts';
import { shareOfCapability } from '#core/rep/strengthCurve.ts';
import type { SpeedZone } from '#core/strength/chanceInZone.ts';
import { speedSdMps } from '#core/strength/noise.ts';
import { DAY_SD } from '#core/strength/parameters.ts';
import type { Aim, Basis } from './Aim.ts';
import { type GearPull, heightAt, rangeThatMatters, type Travel } from './gearPull.ts';
import type { HeightSpread } from './heightSpread.ts';
import type { MostLoad } from './mostLoad.ts';

/**
 * How far a setup is expected to be from the aim, as one number; 0.05 is five points of a percentage (model, "day").
 *
 *   misfit^2 = mean square of the residuals + variance of the shares by what is not known of gear and heights
 *              + felt^2 for each piece hung
 *
 *   capability: residuals share(s) - aim(s) over the range that matters, aim linear bottom to lockout
 *   percent:    residuals achieved share - target, over the targets
 *   speed:      speedMiss^2 + the same of share(s) over its mean, the spread about it counted for EVENNESS of itself
 *
 * All residuals are linear in the bar's mass, `residual = perKg * barKg + gear`, so that the best bar mass is a
 * closed form: `-sum(perKg * gear) / sum(perKg^2)`.
 */
export interface AimRows {
  perKg: readonly number[];
  /** Residuals of a bar without mass and without gear. */
  empty: readonly number[];
  /** What one piece of gear adds to the residuals. */
  gearRow(pull: GearPull): number[];
  /** Shares that a force makes where the aim looks, before anything is taken off them. */
  shareRow(pull: GearPull): number[];
  /** The share of a kilogram on the bar, mean of where the aim looks. */
  sharePerKg: number;
  /** How much the lifter's strength with bands may differ from that without, as a share of their pull. */
  bandErrorSd: number;
  /** What one more piece must take off the squared misfit to be worth hanging: what nobody can feel. */
  feltSquare: number;
}

/** The lifter's side of the task: capability, travel and the maximum (kg) that percentages refer to. */
export interface LifterTask {
  capability: Capability;
  travel: Travel;
  aim: Aim;
  referenceKg: Kg;
  /** How well the heights are known; left out: they stand fast. */
  heightSpread?: HeightSpread;
  /** What this lifter's measured speeds are beyond the model's; left out: speeds are the model's. */
  speedCorrection?: SpeedCorrection;
  /** What this lifter may hold at most; left out: nothing limits it. */
  most?: MostLoad;
}

/**
 * From straight weight to 25 % in bands the spread of share(s) falls from 0.35 to 0.28 of its mean; counted so, that is
 * worth a miss of some 0.04 m/s, the scatter of one set's measured speed. Evenness moves no set further (judgement).
 */
const EVENNESS = 0.25;
/** ln strength that bands show beyond the model, for a load all of bands; assumption, as in the estimate's prior. */
const BAND_ERROR_SD = 0.1;

/**
 * The square of what nobody can feel: the form of the day hides `DAY_SD` of what is lifted, and a luckier rounding of the bar
 * (half of its finest step) brings as much. `levelSquare`: mean square of what is lifted, in any unit; `perKg`: a kilogram in that unit.
 */
export function feltSquare(levelSquare: number, perKg: number, stepKg: number): number {
  return DAY_SD ** 2 * levelSquare + ((stepKg / 2) * perKg) ** 2;
}

/**
 * The residuals of the aim; for a speed zone those of the spread alone. `stepKg`: the finest step of the bar's mass. Throws
 * RangeError where the lifter cannot hold the own body somewhere that matters: no load has a share of strength there.
 */
export function aimRows({ capability, travel, aim, referenceKg }: LifterTask, stepKg: number): AimRows {
  const g = travel.gravityMps2;
  if (aim.by === 'percent') {
    const sharePerKg = 1 / referenceKg;
    const gearRow = (pull: GearPull) =>
      aim.targets.map(({ basis }) => pullOn(basis, pull) / (g * referenceKg));
    return {
      perKg: aim.targets.map(() => sharePerKg),
      empty: aim.targets.map(({ share }) => 0 - share),
      gearRow,
      shareRow: gearRow,
      sharePerKg,
      // Percentages are of a maximum that stands fast: what strength does with bands is not asked.
      bandErrorSd: 0,
      feltSquare: feltSquare(meanSquare(aim.targets.map(({ share }) => share)), sharePerKg, stepKg),
    };
  }
  const sharePerN = rangeThatMatters.map((s) => shareOfCapability(1, capability, heightAt(travel, s), g));
  if (!sharePerN.every(Number.isFinite))
    throw new RangeError(
      'the own body is more than can be held on this way up, so that no bar has a share of strength',
    );
  const perKg = sharePerN.map((share) => share * g);
  const shares = (pull: GearPull) => pull.gridN.map((forceN, i) => forceN * sharePerN[i]!);
  const sharePerKg = meanOf(perKg);
  const common = { shareRow: shares, sharePerKg, bandErrorSd: BAND_ERROR_SD };
  if (aim.by === 'capability') {
    const wanted = rangeThatMatters.map((s) => aim.bottomShare + (aim.lockoutShare - aim.bottomShare) * s);
    return {
      ...common,
      perKg,
      empty: wanted.map((share) => -share),
      gearRow: shares,
      feltSquare: feltSquare(meanSquare(wanted), sharePerKg, stepKg),
    };
  }
  return {
    ...common,
    perKg: unevenness(perKg),
    empty: perKg.map(() => 0),
    gearRow: (pull) => unevenness(shares(pull)),
    // Shares count over their mean here, and speed is held to the zone by itself.
    feltSquare: feltSquare(1, 0, stepKg),
  };
}

function unevenness(values: readonly number[]): number[] {
  return centred(values).map((value) => EVENNESS * value);
}

/** `misfit^2 = curvature * barKg^2 + 2 * tilt * barKg + level`: the rows of one gear set, summed once. */
export interface BarParabola {
  curvature: number;
  tilt: number;
  level: number;
}

/** Sums up the residuals `perKg * barKg + rest` of one gear set. */
export function barParabola(perKg: readonly number[], rest: ArrayLike<number>): BarParabola {
  let [curvature, tilt, level] = [0, 0, 0];
  for (let i = 0; i < perKg.length; i++) {
    curvature += perKg[i]! ** 2;
    tilt += perKg[i]! * rest[i]!;
    level += rest[i]! ** 2;
  }
  return { curvature: curvature / perKg.length, tilt: tilt / perKg.length, level: level / perKg.length };
}

/** Root mean square of the residuals with this bar. */
export function misfitOf({ curvature, tilt, level }: BarParabola, barKg: Kg): number {
  return Math.sqrt(Math.max(0, (curvature * barKg + 2 * tilt) * barKg + level));
}

/** The bar mass, loadable or not, with the least root mean square of shares of which every kilogram is one. */
export function bestBarKg({ curvature, tilt }: BarParabola): number {
  return -tilt / curvature;
}

/**
 * Root of the expected squared distance of one set's measured mean speed from the zone, over the middle of the zone: about an
 * expected speed it scatters normally. Least in the middle, and more the further from there. A rep not made has speed 0.
 */
export function speedMiss({ fromMps, toMps }: SpeedZone, speedMps: number): number {
  const sdMps = speedSdMps(1);
  const beyond = (byMps: number) => {
    const z = byMps / sdMps;
    return Math.max(0, sdMps ** 2 * ((1 + z * z) * normalCdf(z) + z * normalDensity(z)));
  };
  return Math.sqrt(beyond(fromMps - speedMps) + beyond(speedMps - toMps)) / ((fromMps + toMps) / 2);
}

function pullOn(basis: Basis, pull: GearPull): number {
  if (basis === 'bar') return 0;
  return { bottom: pull.bottomN, lockout: pull.lockoutN, mean: pull.meanN }[basis];
}

/** Mean of the squares. */
export function meanSquare(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]! ** 2;
  return sum / values.length;
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function centred(values: readonly number[]): number[] {
  const mean = meanOf(values);
  return values.map((value) => value - mean);
}

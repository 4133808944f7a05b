import type { Capability } from '#core/rep/Capability.ts';
import { shareOfCapability } from '#core/rep/strengthCurve.ts';
import type { Aim, Basis } from './Aim.ts';
import { type GearPull, heightAt, rangeThatMatters, type Travel } from './gearPull.ts';

/**
 * How far a setup is from the aim, as one number; 0.05 is five points of a percentage (model, "prescribing").
 *
 *   capability: root mean square of share(s) - aim(s) over the range that matters, aim linear bottom to lockout
 *   percent:    root mean square of (achieved share - target) over the targets
 *   speed:      sqrt(speedMiss^2 + spread^2), spread = standard deviation of share(s) over the range that matters
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
}

/** The lifter's side of the task: capability, travel and the maximum (kg) that percentages refer to. */
export interface LifterTask {
  capability: Capability;
  travel: Travel;
  aim: Aim;
  referenceKg: number;
}

/** The residuals of the aim; for a speed zone those of the spread alone. */
export function aimRows({ capability, travel, aim, referenceKg }: LifterTask): AimRows {
  const g = travel.gravityMps2;
  if (aim.by === 'percent') {
    return {
      perKg: aim.targets.map(() => 1 / referenceKg),
      empty: aim.targets.map(({ share }) => -share),
      gearRow: (pull) => aim.targets.map(({ basis }) => pullOn(basis, pull) / (g * referenceKg)),
    };
  }
  const sharePerN = rangeThatMatters.map((s) => shareOfCapability(1, capability, heightAt(travel, s), g));
  const perKg = sharePerN.map((share) => share * g);
  const shares = (pull: GearPull) => pull.gridN.map((forceN, i) => forceN * sharePerN[i]!);
  if (aim.by === 'capability') {
    const wanted = (s: number) => aim.bottomShare + (aim.lockoutShare - aim.bottomShare) * s;
    return { perKg, empty: rangeThatMatters.map((s) => -wanted(s)), gearRow: shares };
  }
  return { perKg: centred(perKg), empty: perKg.map(() => 0), gearRow: (pull) => centred(shares(pull)) };
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
export function misfitOf({ curvature, tilt, level }: BarParabola, barKg: number): number {
  return Math.sqrt(Math.max(0, (curvature * barKg + 2 * tilt) * barKg + level));
}

/** The bar mass, loadable or not, with the least root mean square; 0 where no bar changes it. */
export function bestBarKg({ curvature, tilt }: BarParabola): number {
  return curvature > 0 ? -tilt / curvature : 0;
}

/** Distance of a mean speed from the zone over the middle of the zone; 0 inside. A rep not made has speed 0. */
export function speedMiss({ fromMps, toMps }: { fromMps: number; toMps: number }, speedMps: number): number {
  return Math.max(fromMps - speedMps, speedMps - toMps, 0) / ((fromMps + toMps) / 2);
}

function pullOn(basis: Basis, pull: GearPull): number {
  if (basis === 'bar') return 0;
  return { bottom: pull.bottomN, lockout: pull.lockoutN, mean: pull.meanN }[basis];
}

function centred(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
}

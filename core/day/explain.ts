import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { curveOf, type LoadCurve, type LoadPoint } from '#core/load/loadCurve.ts';
import type { Kg, Newton } from '#core/numeric/quantity.ts';
import { expectedRep } from '#core/rep/expectedSpeed.ts';
import { shareOfCapability } from '#core/rep/strengthCurve.ts';
import { NORMAL_95 } from '../numeric/normal.ts';
import type { Basis } from './Aim.ts';
import { anchorPulls } from './anchorPulls.ts';
import { type BandLimits, bandCautions } from './bandCautions.ts';
import type { Caution } from './Caution.ts';
import type { ExplainedForce, Explanation } from './Explanation.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import { exactHeights, withHeightSpread } from './heightSpread.ts';
import type { LifterTask } from './misfit.ts';

const POINTS = 21;
/** From this share of capability on somebody stands ready and the safeties are set; assumption, common practice. */
const MAXIMAL_SHARE = 0.85;
const bases: readonly Basis[] = ['bar', 'bottom', 'mean', 'lockout'];

/**
 * Works out everything there is to say about one bar for one lifter. Without `heightSpread` the heights stand fast. `tiredLn`:
 * ln strength that is still missing from what was lifted before, when the first rep starts.
 */
export function explain(
  task: Omit<LifterTask, 'aim'>,
  gear: RackGear,
  set: GearSet,
  barKg: Kg,
  limits: BandLimits,
  tiredLn = 0,
): Explanation {
  const load = gearLoad(gear, set, task.travel, barKg);
  const compiled = compileLoad(load);
  const bare = curveOf(compiled, POINTS);
  const { heightSpread = exactHeights } = task;
  const totalN = (zM: number) => compiled.at(zM).totalN;
  const curve = {
    ...bare,
    points: bare.points.map((point) => withHeightSpread(point, heightSpread, totalN)),
  };
  const strengthN = task.capability.strengthN * Math.exp(-tiredLn);
  const rep = expectedRep(compiled, { ...task.capability, strengthN }, 0, task.speedCorrection);
  const [bottom, mid, lockout] = [0, (POINTS - 1) / 2, POINTS - 1].map((i) =>
    explainedPoint(curve.points[i]!),
  );
  const mean = explainedMean(load, curve);
  const forces = { bar: null, bottom: bottom!, mean, lockout: lockout! };
  const shares = curve.points.map(({ s, zM, totalN }) => ({
    s,
    zM,
    share: shareOfCapability(totalN, task.capability, zM, load.gravityMps2),
  }));
  const anchors = anchorPulls(gear, set, task.travel);
  const explanation: Omit<Explanation, 'cautions'> = {
    barKg,
    bottom: bottom!,
    mid: mid!,
    lockout: lockout!,
    mean,
    percentages: bases.map((basis) => ({
      basis,
      ...percentage(forces[basis], barKg, task.referenceKg, load.gravityMps2),
    })),
    shares,
    firstRep: {
      made: rep.made,
      meanSpeedMps: rep.meanSpeedMps,
      peakSpeedMps: rep.peakSpeedMps,
      durationS: rep.durationS,
      slowestS: rep.slowest.s,
      slowestSpeedMps: rep.slowest.speedMps,
    },
    foreAft: { bottomN: curve.points[0]!.foreAftN, lockoutN: curve.points.at(-1)!.foreAftN },
    anchors,
    slackBelowM: curve.slackBelowM,
  };
  return {
    ...explanation,
    cautions: [...liftCautions(explanation), ...bandCautions(gear, set, task.travel, limits)],
  };
}

type KnownForce = Pick<LoadPoint, 'totalN' | 'sdN' | 'barN' | 'bandN' | 'chainN'>;

function explainedPoint({ totalN, sdN, barN, bandN, chainN }: KnownForce): ExplainedForce {
  return { totalN, low95N: totalN - NORMAL_95 * sdN, high95N: totalN + NORMAL_95 * sdN, barN, bandN, chainN };
}

/** Means over the range; the standard deviation too is a mean, since a band that is off is off all the way. */
function explainedMean(load: Load, curve: LoadCurve): ExplainedForce {
  const mean = (pick: (point: LoadPoint) => number) =>
    curve.points.reduce((sum, point, i) => sum + pick(point) * (i === 0 || i === POINTS - 1 ? 0.5 : 1), 0) /
    (POINTS - 1);
  const barN = load.barKg * load.gravityMps2;
  const chainN = mean((point) => point.chainN);
  const sdN = mean((point) => point.sdN);
  return explainedPoint({
    totalN: curve.meanN,
    sdN,
    barN,
    bandN: curve.meanN - barN - chainN,
    chainN,
  });
}

function percentage(force: ExplainedForce | null, barKg: Kg, referenceKg: Kg, gravityMps2: number) {
  if (force === null)
    return { share: barKg / referenceKg, low95: barKg / referenceKg, high95: barKg / referenceKg };
  const share = (forceN: Newton) => forceN / (gravityMps2 * referenceKg);
  return { share: share(force.totalN), low95: share(force.low95N), high95: share(force.high95N) };
}

function liftCautions({
  firstRep,
  shares,
  slackBelowM,
  bottom,
  anchors,
}: Omit<Explanation, 'cautions'>): Caution[] {
  const cautions: Caution[] = [];
  const peakShare = Math.max(...shares.map(({ share }) => share));
  if (!firstRep.made) cautions.push({ code: 'notMade', stoppedAtS: firstRep.slowestS });
  if (peakShare >= MAXIMAL_SHARE) cautions.push({ code: 'maximal', peakShare });
  if (slackBelowM !== null) cautions.push({ code: 'slackBottom', belowM: slackBelowM });
  if (bottom.bandN < 0) cautions.push({ code: 'lightened', atBottomN: -bottom.bandN });
  for (const { anchorId, pullN, ratedLoadN } of anchors) {
    if (ratedLoadN === null) cautions.push({ code: 'anchorNotRated', anchorId, pullN });
    else if (pullN > ratedLoadN) cautions.push({ code: 'anchorOverloaded', anchorId, pullN, ratedLoadN });
  }
  return cautions;
}

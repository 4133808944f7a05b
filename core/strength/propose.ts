import { cholesky } from '../numeric/cholesky.ts';
import type { NormalShape } from '../numeric/importanceSample.ts';
import { parabolaPeak } from '../numeric/parabolaPeak.ts';
import type { LnKg, LnRatio } from '../numeric/quantity.ts';
import { type KalmanResult, kalmanPass } from './kalmanPass.ts';
import { lnPrior, type ParameterName, type Parameters, type Prior } from './parameters.ts';
import type { LiftModel } from './readGroup.ts';
import { readingsBeside } from './readingsBeside.ts';
import type { Session } from './sessions.ts';

/** Passes of the Kalman filter that linearise about what the one before found. */
const PASSES = 4;
/** From the third pass on they go only this share of the way: else they swing about what they look for. */
const SHARE_OF_WAY = 0.5;
/** The passes go no farther than this many standard deviations of the prior: beyond it lines lead astray. */
const FARTHEST = 2.5;

interface Found {
  kalman: KalmanResult;
  /** Parameters in the state of the filter. */
  names: ParameterName[];
  around: Parameters;
  hyper: { name: ParameterName; sd: number }[];
}

/**
 * Where the parameters that a log tells of may lie, about which answers are then tried, and how each group of sets surprised:
 * passes of the Kalman filter, with the two standard deviations found by a parabola each.
 */
export function propose(
  sessions: readonly Session[],
  lift: LiftModel,
  prior: Prior,
  start: { meanLn: LnKg; sdLn: LnRatio },
  active: ParameterName[],
): { shape: NormalShape; surprises: KalmanResult['surprises'] } {
  const names = active.filter((name) => name !== 'lnDaySd' && name !== 'lnWeekSd');
  const around = { ...prior.mean };
  let read = readingsBeside(lift, { ...around }, names);
  let dayLn: number[] | null = null;
  const pass = () => kalmanPass(sessions, lift, prior, start, names, { around, read, dayLn });
  let kalman = pass();
  const moveThere = (share: number) => {
    names.forEach((name, k) => {
      const reach = FARTHEST * prior.sd[name];
      const to = prior.mean[name] + Math.min(Math.max(kalman.mean[k + 2]! - prior.mean[name], -reach), reach);
      around[name] += share * (to - around[name]);
    });
    read = readingsBeside(lift, { ...around }, names);
  };
  for (let i = 1; i < PASSES; i++) {
    moveThere(i < 2 ? 1 : SHARE_OF_WAY);
    dayLn = kalman.dayLn;
    kalman = pass();
  }
  const hyper: Found['hyper'] = [];
  let here = kalman.lnEvidence;
  for (const name of ['lnDaySd', 'lnWeekSd'] as const) {
    if (!active.includes(name)) continue;
    const density = (value: number) => {
      around[name] = value;
      return pass().lnEvidence + lnPrior(prior, name, value);
    };
    const peak = parabolaPeak(density, prior.mean[name], here, prior.sd[name]);
    around[name] = peak.at;
    here = peak.value;
    hyper.push({ name, sd: Math.min(peak.sd, prior.sd[name]) });
  }
  kalman = pass();
  moveThere(1);
  return { shape: shapeOf({ kalman, names, around, hyper }, prior, active), surprises: kalman.surprises };
}

function shapeOf(
  { kalman, names, around, hyper }: Found,
  prior: Prior,
  active: ParameterName[],
): NormalShape {
  const n = active.length;
  const covariance = new Float64Array(n * n);
  const stateSize = names.length + 2;
  active.forEach((a, i) => {
    const own = hyper.find(({ name }) => name === a);
    if (own) {
      covariance[i * n + i] = own.sd ** 2;
      return;
    }
    const row = names.indexOf(a) + 2;
    active.forEach((b, j) => {
      const column = names.indexOf(b) + 2;
      if (column > 1) covariance[i * n + j] = kalman.covariance[row * stateSize + column]!;
    });
    // Never so narrow that nothing beside it is tried.
    covariance[i * n + i] = Math.max(covariance[i * n + i]!, (0.02 * prior.sd[a]) ** 2);
  });
  return {
    mean: Float64Array.from(active, (name) => around[name]),
    root: cholesky(covariance, n),
  };
}

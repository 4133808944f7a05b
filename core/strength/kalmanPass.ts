import { normalCdf, normalDensity, normalQuantile } from '../numeric/normal.ts';

import {
  BAD_DAY_SHARE,
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_UNSAID_REPS,
  reserveSd,
  SET_SD_LN,
  SHARED_SPEED_SD_MPS,
  SLIP_SD_LN,
  SLIP_SHARE,
  SPEED_SD_MPS,
  TAIL,
  WILD_SHARE,
} from './noise.ts';
import { DAY_SD, type ParameterName, type Parameters, type Prior, WEEK_SD } from './parameters.ts';
import {
  atSurplus,
  type LiftModel,
  neededSurplus,
  type ReadModel,
  readerOf,
  repsPossible,
  surplusAtRep,
} from './readGroup.ts';
import { MOST_ALIKE } from './sessionLikelihood.ts';
import type { EffortGroup, Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

/** A normal approximation of everything that is believed after the last session. */
export interface KalmanResult {
  lnEvidence: number;
  /** Names of the parameters in the state, in its order after strength and the day's form. */
  names: ParameterName[];
  mean: Float64Array;
  covariance: Float64Array;
  /** What was believed of the day's strength once its sets were in, session by session. */
  dayLn: number[];
  /** Signed standard deviations of each group given all before it, and by how much it moved ln strength. */
  surprises: { session: number; group: number; surprise: number; movedLn: number }[];
}

/** Steps by which the change of a reading with each parameter is taken. */
const DIFFERENCE = 0.02;

/**
 * One pass of an extended Kalman filter over the sessions, with the state (strength, the day's form, parameters).
 * Speeds and reps left are linearised about `around` and the day's strength `dayLn` of an earlier pass; a made or missed
 * set, one-sided evidence, is met by its first two moments. Errors are Student's: a reading counts less the wilder it is.
 * Also writes into each group what the sets before it had left of tiredness.
 */
export function kalmanPass(
  sessions: readonly Session[],
  lift: LiftModel,
  prior: Prior,
  strength: { meanLn: number; sdLn: number },
  active: readonly ParameterName[],
  around: Parameters,
  dayLn: readonly number[] | null,
): KalmanResult {
  const names: ParameterName[] = active.filter((name) => name !== 'lnDaySd' && name !== 'lnWeekSd');
  const n = names.length + 2;
  const mean = new Float64Array(n);
  const covariance = new Float64Array(n * n);
  mean[0] = strength.meanLn;
  covariance[0] = strength.sdLn ** 2;
  names.forEach((name, k) => {
    mean[k + 2] = prior.mean[name];
    covariance[(k + 2) * n + k + 2] = prior.sd[name] ** 2;
  });
  const daySd = DAY_SD * Math.exp(around.lnDaySd);
  const weekSd = WEEK_SD * Math.exp(around.lnWeekSd);
  const gainIndex = names.indexOf('weekGain') + 2;
  const tiringAt = names.indexOf('lnTiring');
  const linear = linearReadings(lift, around, names);
  const h = new Float64Array(n);
  const Ph = new Float64Array(n);
  let lnEvidence = 0;
  const dayLnNow: number[] = [];
  const surprises: KalmanResult['surprises'] = [];

  const project = () => {
    let variance = 0;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      const row = i * n;
      for (let j = 0; j < n; j++) sum += covariance[row + j]! * h[j]!;
      Ph[i] = sum;
      variance += h[i]! * sum;
    }
    return Math.max(variance, 1e-12);
  };
  /** Moves the mean by Ph * alpha and takes Ph Ph^T * beta off the covariance. */
  const update = (alpha: number, beta: number) => {
    for (let i = 0; i < n; i++) {
      mean[i]! += Ph[i]! * alpha;
      const scaled = Ph[i]! * beta;
      const row = i * n;
      for (let j = 0; j < n; j++) covariance[row + j]! -= scaled * Ph[j]!;
    }
  };
  const gauss = (innovation: number, variance: number, sd: number): number => {
    const wide = variance + sd * sd;
    const z = innovation / Math.sqrt(wide);
    const trust = Math.min(1, (TAIL + 1) / (TAIL + z * z));
    const total = variance + (sd * sd * 1.2) / trust;
    update(innovation / total, 1 / total);
    lnEvidence += -0.5 * Math.log(wide) - ((TAIL + 1) / 2) * Math.log(1 + (z * z) / TAIL);
    return z;
  };
  /** The surplus `mean - offset` is known to be above (side 1) or below (side -1) nought. */
  const oneSided = (side: 1 | -1, surplus: number, variance: number): number => {
    const sd = Math.sqrt(variance + SET_SD_LN ** 2);
    const z = (side * surplus) / sd;
    const slipSd = Math.sqrt(variance + SLIP_SD_LN ** 2);
    const slipZ = (side * surplus) / slipSd;
    const right = 1 - SLIP_SHARE - WILD_SHARE;
    const likelihood = right * normalCdf(z) + SLIP_SHARE * normalCdf(slipZ) + WILD_SHARE / 2;
    const alpha =
      (side * ((right * normalDensity(z)) / sd + (SLIP_SHARE * normalDensity(slipZ)) / slipSd)) / likelihood;
    const beta = Math.max(0, alpha * alpha + (alpha * surplus) / (sd * sd));
    update(alpha, beta);
    lnEvidence += Math.log(likelihood);
    return likelihood;
  };

  let lastDay = sessions[0]?.day ?? 0;
  sessions.forEach((session, at) => {
    const weeks = (session.day - lastDay) / 7;
    lastDay = session.day;
    advance(covariance, mean, n, gainIndex > 1 ? gainIndex : -1, weeks, weekSd);
    for (let j = 0; j < n; j++) {
      covariance[n + j] = 0;
      covariance[j * n + 1] = 0;
    }
    mean[1] = 0;
    covariance[n + 1] = daySd * daySd * (1 + BAD_DAY_SHARE * 3);
    let tired = { fast: 0, slow: 0 };
    session.groups.forEach((group, g) => {
      const reading = linear.of(group.model);
      const setOff = (name: ParameterName | null, value: number) => {
        const k = name === null ? -1 : names.indexOf(name);
        if (k >= 0) h[k + 2] = value;
        return k >= 0 ? mean[k + 2]! : 0;
      };
      const surplusOfMean = () => {
        h.fill(0);
        h[0] = 1;
        h[1] = 1;
        let level = mean[0]! + mean[1]! - reading.now.straightLn - group.carriedLn;
        for (let k = 0; k < names.length; k++) {
          h[k + 2] = -reading.straightSlope[k]!;
          level -= reading.straightSlope[k]! * (mean[k + 2]! - around[names[k]!]);
        }
        // What was carried over grows with tiring like any other loss.
        if (tiringAt >= 0) {
          h[tiringAt + 2] = -group.carriedLn;
          level -= group.carriedLn * (mean[tiringAt + 2]! - around.lnTiring);
        }
        level += setOff(group.equipment, 1);
        level += group.platform ? setOff('platform', 1) : 0;
        return level;
      };
      group.carriedLn = 0;
      const before = mean[0]!;
      const nominal = dayLn?.[at] ?? mean[0]! + mean[1]!;
      const worn = wear(group, reading.now, lift, nominal - reading.now.straightLn, tired);
      tired = worn.after;
      group.carriedLn = worn.carriedLn;

      /** Surplus left after what just these reps need; needs the loss at hand and how it grows with tiring. */
      const surplusBeyond = (reps: number) => {
        const needed = neededSurplus(reading.now.table.lossLn, reps);
        const level = surplusOfMean() - needed;
        if (tiringAt < 0) return level;
        const slope = (neededSurplus(reading.tiredLossLn, reps) - needed) / DIFFERENCE;
        h[tiringAt + 2]! -= slope;
        return level - slope * (mean[tiringAt + 2]! - around.lnTiring);
      };
      let surprise = 0;
      const weight = (z: number) => {
        if (Math.abs(z) > Math.abs(surprise)) surprise = z;
      };
      const loss = reading.now.table.lossLn;
      // A set says first whether it was made, and then how fast.
      if (group.made > 0) {
        for (let i = 0; i < Math.min(group.count, MOST_ALIKE); i++) {
          const level = surplusBeyond(group.made);
          const likelihood = oneSided(1, level, project());
          if (i === 0) weight(twoSided(likelihood));
        }
      }
      if (group.missed) {
        for (let i = 0; i < Math.min(group.count, MOST_ALIKE); i++) {
          const level = surplusBeyond(group.made + 1);
          const likelihood = oneSided(-1, level, project());
          if (i === 0) weight(-twoSided(likelihood));
        }
      }
      const speed = (told: EffortGroup['fastestMps'], factor: number, read: (surplus: number) => number) => {
        if (told.count === 0) return;
        const level = surplusOfMean();
        const base = Math.max(level, 0.002);
        const slope = (read(base + 0.01) - read(Math.max(0, base - 0.01))) / (0.01 + Math.min(0.01, base));
        const expected = read(base);
        for (let i = 0; i < n; i++) h[i]! *= slope;
        for (let k = 0; k < names.length; k++) {
          h[k + 2]! += reading.speedSlope(k, base);
        }
        let predicted = expected;
        for (let k = 0; k < names.length; k++)
          predicted += reading.speedSlope(k, base) * (mean[k + 2]! - around[names[k]!]);
        const sd = factor * Math.sqrt(SPEED_SD_MPS ** 2 / told.count + SHARED_SPEED_SD_MPS ** 2);
        weight(gauss(told.mean - predicted, project(), sd));
      };
      speed(group.fastestMps, 1, (u) => atSurplus(reading.now.table.speedMps, u));
      speed(group.peakMps, PEAK_FACTOR, (u) => atSurplus(reading.now.table.peakMps, u));
      speed(group.lastMps, LAST_FACTOR, (u) =>
        atSurplus(reading.now.table.speedMps, surplusAtRep(loss, u, group.made)),
      );
      if (group.reserve.count > 0) {
        const ladder = reading.now.table.ladder();
        const expected = Math.max(group.made, repsPossible(ladder, surplusOfMean()));
        const said = group.made + group.reserve.mean + RESERVE_UNSAID_REPS;
        const reps = said + 0.5;
        const perRep = neededSurplus(loss, said + 1) - neededSurplus(loss, said);
        const sdLn = Math.max(SET_SD_LN, reserveSd(expected - group.made, group.reserve.count) * perRep);
        const level = surplusBeyond(reps);
        weight(-gauss(-level, project(), sdLn));
      }
      surprises.push({ session: at, group: g, surprise, movedLn: mean[0]! - before });
    });
    dayLnNow.push(mean[0]! + mean[1]);
  });
  // Kept at the population's tiring, so that every lifter's own can scale it.
  for (const { groups } of sessions)
    for (const group of groups) group.carriedLn *= Math.exp(-around.lnTiring);
  return { lnEvidence, names, mean, covariance, dayLn: dayLnNow, surprises };
}

/** A likelihood of 1 surprises nobody; one of 0.05 is as surprising as two standard deviations. */
function twoSided(likelihood: number): number {
  return -normalQuantile(Math.min(0.5, Math.max(1e-12, likelihood / 2)));
}

/** Time passes: strength gains its weekly share and wanders. */
function advance(
  covariance: Float64Array,
  mean: Float64Array,
  n: number,
  gainIndex: number,
  weeks: number,
  weekSd: number,
): void {
  if (!(weeks > 0)) return;
  if (gainIndex >= 0) {
    mean[0]! += weeks * mean[gainIndex]!;
    for (let j = 0; j < n; j++) covariance[j]! += weeks * covariance[gainIndex * n + j]!;
    for (let i = 0; i < n; i++) covariance[i * n]! += weeks * covariance[i * n + gainIndex]!;
  }
  covariance[0]! += weeks * weekSd * weekSd;
}

/** Tiredness from set to set within a group: its mean at the sets' starts, and what is left after the last. */
export function wear(
  group: EffortGroup,
  { table: { lossLn } }: ReadModel,
  { tiring }: LiftModel,
  surplus: number,
  before: { fast: number; slow: number },
): { carriedLn: number; after: { fast: number; slow: number } } {
  let { fast, slow } = before;
  let sum = 0;
  for (const restS of group.restS) {
    fast *= Math.exp(-restS / tiring.fastS);
    slow *= Math.exp(-restS / tiring.slowS);
    const carried = fast + slow;
    sum += carried;
    const reps = group.made + (group.missed ? 1 : 0);
    const start = Math.max(surplus - carried, neededSurplus(lossLn, Math.max(1, group.made)));
    const lost = Math.min(0.5, start - surplusAtRep(lossLn, start, reps + 1));
    fast += tiring.fastShare * lost;
    slow += (1 - tiring.fastShare) * lost;
  }
  return { carriedLn: sum / group.restS.length, after: { fast, slow } };
}

/** Readings of every model at `around`, and how they change with each parameter, made once a model. */
function linearReadings(lift: LiftModel, around: Parameters, names: readonly ParameterName[]) {
  const read = readerOf(around, lift);
  const readBeside = names.map((name) => readerOf({ ...around, [name]: around[name] + DIFFERENCE }, lift));
  const known = new Map<SetModel, ReturnType<typeof make>>();
  const make = (model: SetModel) => {
    const now = read(model);
    const moved = readBeside.map((beside) => beside(model));
    return {
      now,
      tiredLossLn: now.table.lossLn.map((loss) => loss * Math.exp(DIFFERENCE)),
      straightSlope: moved.map(({ straightLn }) => (straightLn - now.straightLn) / DIFFERENCE),
      speedSlope: (k: number, surplus: number) =>
        (atSurplus(moved[k]!.table.speedMps, surplus) - atSurplus(now.table.speedMps, surplus)) / DIFFERENCE,
    };
  };
  return {
    of(model: SetModel) {
      const found = known.get(model) ?? make(model);
      known.set(model, found);
      return found;
    },
  };
}

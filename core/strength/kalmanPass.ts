import { type Moments, mixedNormal } from '../numeric/mixedNormal.ts';
import { normalCdf, normalDensity, normalQuantile } from '../numeric/normal.ts';
import { weightsOfLn } from '../numeric/weightsOfLn.ts';
import {
  changeOver,
  FURTHER_FALL_LN,
  fallChance,
  LEAST_FALL_LN,
  stillShaken,
  trainedWeeks,
} from './change.ts';
import {
  BAD_DAY_BELOW,
  BAD_DAY_FACTOR,
  BAD_DAY_SHARE,
  LAST_FACTOR,
  PEAK_FACTOR,
  RESERVE_SD_PER_REP,
  RESERVE_UNSAID_REPS,
  reserveSd,
  SET_SD_LN,
  SLIP_SD_LN,
  SLIP_SHARE,
  speedSdMps,
  TAIL,
  WILD_SHARE,
} from './noise.ts';
import { DAY_SD, type ParameterName, type Parameters, type Prior } from './parameters.ts';
import type { LiftModel } from './readGroup.ts';
import { DIFFERENCE, type ReadingBeside } from './readingsBeside.ts';
import { atSurplus, type ReadTable } from './readTable.ts';
import { MOST_ALIKE } from './sessionLikelihood.ts';
import type { EffortGroup, Session, Told } from './sessions.ts';
import type { SetModel } from './setModel.ts';
import { wear } from './wear.ts';
import { isOfSeveral, KEPT_REPS, KEPT_SD_LN, LEFT_REPS, LEFT_SD_REPS } from './workUps.ts';

/** A normal approximation of everything that is believed after the last session. */
export interface KalmanResult {
  lnEvidence: number;
  /** Strength, the day's form, and the parameters that were asked for. */
  mean: Float64Array;
  covariance: Float64Array;
  /** What was believed of the day's strength once its sets were in, session by session. */
  dayLn: number[];
  /** Signed standard deviations of each group given all before it, and by how much it moved ln strength. */
  surprises: { session: number; group: number; surprise: number; movedLn: number }[];
}

/** What a pass is linearised about. */
export interface Linearised {
  around: Parameters;
  /** Readings there and beside, in the parameters of the state. */
  read: (model: SetModel) => ReadingBeside;
  /** The day's strength by an earlier pass: tiredness goes by it. */
  dayLn: readonly number[] | null;
}

/**
 * One pass of an extended Kalman filter over the sessions, with the state (strength, the day's form, the parameters `names`).
 * Speeds and reps left are linearised about `around` and the strength believed by then; a made or missed set, one-sided
 * evidence, is met by its first two moments. Errors are
 * Student's: a reading counts less the wilder it is. Also writes into each group what the sets before it had left of tiredness.
 */
export function kalmanPass(
  sessions: readonly Session[],
  lift: LiftModel,
  prior: Prior,
  strength: { meanLn: number; sdLn: number },
  names: readonly ParameterName[],
  { around, read, dayLn }: Linearised,
): KalmanResult {
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
  const gainAt = names.indexOf('weekGain');
  const tiringAt = names.indexOf('lnTiring');
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

  const setOff = (name: ParameterName | null, value: number) => {
    const k = name === null ? -1 : names.indexOf(name);
    if (k >= 0) h[k + 2] = value;
    return k >= 0 ? mean[k + 2]! : 0;
  };
  const surplusOfMean = (group: EffortGroup, reading: ReadingBeside) => {
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
  /** Surplus left after what just these reps need; what they need depends on the shape too. */
  const surplusBeyond = (group: EffortGroup, reading: ReadingBeside, reps: number) => {
    const needed = reading.now.table.neededFor(reps);
    let level = surplusOfMean(group, reading) - needed;
    for (const k of reading.bearing) {
      const slope = (reading.beside[k]!.table.neededFor(reps) - needed) / DIFFERENCE;
      h[k + 2]! -= slope;
      level -= slope * (mean[k + 2]! - around[names[k]!]);
    }
    return level;
  };
  /** What was made and missed of a group; returns how much each surprised. */
  const takeOutcome: Taking = (group, reading) => {
    const { made, missed } = group;
    const times = Math.min(group.count, MOST_ALIKE);
    const surprises: number[] = [];
    for (let i = 0; i < (made > 0 ? times : 0); i++) {
      const likelihood = oneSided(1, surplusBeyond(group, reading, made), project());
      if (i === 0) surprises.push(twoSided(likelihood));
    }
    for (let i = 0; i < (missed ? times : 0); i++) {
      const likelihood = oneSided(-1, surplusBeyond(group, reading, made + 1), project());
      if (i === 0) surprises.push(-twoSided(likelihood));
    }
    return surprises;
  };
  /** How fast a group went and what was left; returns how much each surprised. */
  const takeReadings: Taking = (group, reading) => {
    const surprises: number[] = [];
    /** A quantity that tables tell by surplus was found to be `value`, within `sd`. */
    const found = (value: number, sd: number, quantity: Quantity) => {
      const { table } = reading.now;
      const base = Math.max(surplusOfMean(group, reading), 0.002);
      const change = quantity(table, base + 0.01) - quantity(table, Math.max(0, base - 0.01));
      const slope = change / (0.01 + Math.min(0.01, base));
      for (let i = 0; i < n; i++) h[i]! *= slope;
      let predicted = quantity(table, base);
      reading.beside.forEach((moved, k) => {
        const ownSlope = (quantity(moved.table, base) - quantity(table, base)) / DIFFERENCE;
        h[k + 2]! += ownSlope;
        predicted += ownSlope * (mean[k + 2]! - around[names[k]!]);
      });
      surprises.push(gauss(value - predicted, project(), sd));
    };
    const speed = (told: Told, factor: number, quantity: Quantity) => {
      if (told.count > 0) found(told.mean, factor * speedSdMps(told.count), quantity);
    };
    speed(group.fastestMps, 1, ({ speedMps }, u) => atSurplus(speedMps, u));
    speed(group.peakMps, PEAK_FACTOR, (table, u) => atSurplus(table.peakMps(), u));
    speed(group.lastMps, LAST_FACTOR, (table, u) =>
      atSurplus(table.speedMps, table.surplusAtRep(u, group.made)),
    );
    const { count, mean: left } = group.reserve;
    if (count > 0) {
      const expected = possibleReps(reading.now.table, surplusOfMean(group, reading));
      const sd = reserveSd(expected - group.made, count);
      // The fewer reps are left the surer the answer, which makes fewer of them the likelier.
      const said = group.made + left + RESERVE_UNSAID_REPS - (RESERVE_SD_PER_REP * sd) / Math.sqrt(count);
      found(said, sd, possibleReps);
    }
    if (group.topShare > 0 && isOfSeveral(group)) {
      const surplus = surplusBeyond(group, reading, group.made + KEPT_REPS);
      surprises.push(gauss(-surplus, project(), KEPT_SD_LN / Math.sqrt(group.topShare)));
    } else if (group.topShare > 0)
      found(group.made + LEFT_REPS, LEFT_SD_REPS / Math.sqrt(group.topShare), possibleReps);
    return surprises;
  };

  let lastDay = sessions[0]?.day ?? 0;
  /** What a session's sets tell; returns how each of its groups surprised, and how far it moved strength. */
  const takeSession = (session: Session, at: number, formLn: number, formVariance: number) => {
    for (let j = 0; j < n; j++) {
      covariance[n + j] = 0;
      covariance[j * n + 1] = 0;
    }
    mean[1] = formLn;
    covariance[n + 1] = formVariance;
    const effects = session.groups.map((_, group) => ({ session: at, group, surprise: 0, movedLn: 0 }));
    const takeAll = (take: Taking) =>
      session.groups.forEach((group, g) => {
        const before = mean[0]!;
        const effect = effects[g]!;
        for (const z of take(group, read(group.model)))
          if (Math.abs(z) > Math.abs(effect.surprise)) effect.surprise = z;
        effect.movedLn += mean[0]! - before;
      });
    let tired = { fast: 0, slow: 0 };
    // A day says first what was made and missed, and only then how fast: while little is known of strength, speeds far from
    // where they are linearised would lead astray.
    takeAll((group, reading) => {
      const nominal = dayLn?.[at] ?? mean[0]! + mean[1]!;
      const worn = wear(group, reading.now, lift, nominal - reading.now.straightLn, tired);
      tired = worn.after;
      group.carriedLn = worn.carriedLn;
      return takeOutcome(group, reading);
    });
    takeAll(takeReadings);
    return effects;
  };
  let shaken = 0;
  const stateNow = () => ({ mean: mean.slice(), covariance: covariance.slice(), lnEvidence });
  const goOnFrom = (state: Moments & { lnEvidence: number }) => {
    mean.set(state.mean);
    covariance.set(state.covariance);
    lnEvidence = state.lnEvidence;
  };
  sessions.forEach((session, at) => {
    const weeks = (session.day - lastDay) / 7;
    lastDay = session.day;
    advance(covariance, mean, n, gainAt + 2, weeks, around.lnWeekSd);
    shaken = stillShaken(shaken, weeks);
    const chance = fallChance(weeks, shaken);
    const before = stateNow();
    const effects = takeSession(session, at, 0, daySd * daySd * (1 + BAD_DAY_SHARE * 3));
    if (chance > 0 && effects.some(({ surprise }) => surprise < FALL_ASKED)) {
      // A day far below what was expected is read twice more, as a bad day and as one after a fall; of all three the moments are kept.
      const usual = stateNow();
      goOnFrom(before);
      takeSession(session, at, -BAD_DAY_BELOW * daySd, (BAD_DAY_FACTOR * daySd) ** 2);
      const bad = stateNow();
      goOnFrom(before);
      mean[0]! -= LEAST_FALL_LN + FURTHER_FALL_LN;
      covariance[0]! += FURTHER_FALL_LN ** 2;
      takeSession(session, at, 0, daySd * daySd);
      const fallen = stateNow();
      const states = [usual, bad, fallen];
      const chances = [(1 - chance) * (1 - BAD_DAY_SHARE), (1 - chance) * BAD_DAY_SHARE, chance];
      const lnJoint = states.map((state, k) => Math.log(chances[k]!) + state.lnEvidence);
      const most = Math.max(...lnJoint);
      const shares = [...weightsOfLn(lnJoint).weights];
      const lnMixed = most - Math.log(shares[lnJoint.indexOf(most)]!);
      goOnFrom({ ...mixedNormal(states, shares), lnEvidence: lnMixed });
      shaken = shares[2]! + (1 - shares[2]!) * shaken;
    }
    surprises.push(...effects);
    dayLnNow.push(mean[0]! + mean[1]!);
  });
  // Kept at the population's tiring, so that every lifter's own can scale it.
  for (const { groups } of sessions)
    for (const group of groups) group.carriedLn *= Math.exp(-around.lnTiring);
  return { lnEvidence, mean, covariance, dayLn: dayLnNow, surprises };
}

/** Takes what a group tells into the state; returns how much it surprised, in signed standard deviations. */
type Taking = (group: EffortGroup, reading: ReadingBeside) => number[];
/** What a table tells by the surplus of strength. */
type Quantity = (table: ReadTable, surplus: number) => number;

/** A likelihood of 1 surprises nobody; one of 0.05 is as surprising as two standard deviations. */
function twoSided(likelihood: number): number {
  return -normalQuantile(Math.min(0.5, Math.max(1e-12, likelihood / 2)));
}

/** Surprises below so many standard deviations let a fall be thought of. */
const FALL_ASKED = -2;

/** Time passes: strength changes, and with it what hangs on its gain. `gainIndex` below 2: no gain in the state. */
function advance(
  covariance: Float64Array,
  mean: Float64Array,
  n: number,
  gainIndex: number,
  weeks: number,
  lnWeekSd: number,
): void {
  if (!(weeks > 0)) return;
  const isLearned = gainIndex > 1;
  const { meanLn, sdLn } = changeOver(weeks, { weekGain: isLearned ? mean[gainIndex]! : 0, lnWeekSd });
  mean[0]! += meanLn;
  if (isLearned) {
    const trained = trainedWeeks(weeks);
    for (let j = 0; j < n; j++) covariance[j]! += trained * covariance[gainIndex * n + j]!;
    for (let i = 0; i < n; i++) covariance[i * n]! += trained * covariance[i * n + gainIndex]!;
  }
  covariance[0]! += sdLn * sdLn;
}

function possibleReps(table: ReadTable, surplus: number): number {
  return table.repsPossible(surplus);
}

import { mixedNormal } from '../numeric/mixedNormal.ts';
import type { LnKg, LnRatio } from '../numeric/quantity.ts';
import { weightsOfLn } from '../numeric/weightsOfLn.ts';
import { carryOver } from './carryOver.ts';
import {
  changeOver,
  FURTHER_FALL_LN,
  fallChance,
  LEAST_FALL_LN,
  stillShaken,
  trainedWeeks,
} from './change.ts';
import { groupTaker, type Taking } from './groupTaker.ts';
import { NormalState, type StateThen } from './NormalState.ts';
import { BAD_DAY, USUAL_DAY } from './noise.ts';
import { DAY_SD, type ParameterName, type Parameters, type Prior } from './parameters.ts';
import type { LiftModel } from './readGroup.ts';
import type { ReadingBeside } from './readingsBeside.ts';
import type { Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

/** A normal approximation of everything that is believed after the last session. */
export interface KalmanResult extends StateThen {
  /** What was believed of the day's strength once its sets were in, session by session. */
  dayLn: number[];
  /** Signed standard deviations of each group given all before it, and by how much it moved ln strength. */
  surprises: { session: number; group: number; surprise: number; movedLn: number }[];
}

/** What a pass is linearised about. */
export interface Linearised {
  around: Parameters;
  /** What a set reads at `around`, and how that changes with each parameter of the state. */
  read: (model: SetModel) => ReadingBeside;
  /** ln strength of each day from an earlier pass, which tells how tired its sets left the lifter. */
  dayLn: readonly number[] | null;
}

/**
 * One pass of an extended Kalman filter over the sessions, with the state (strength, the day's form, the parameters `names`).
 * Speeds and reps left are linearised about `around` and the strength believed by then; a made or missed set, one-sided
 * evidence, is met by its first two moments. Also writes into each group what the sets before it had left of tiredness.
 */
export function kalmanPass(
  sessions: readonly Session[],
  lift: LiftModel,
  prior: Prior,
  strength: { meanLn: LnKg; sdLn: LnRatio },
  names: readonly ParameterName[],
  { around, read, dayLn }: Linearised,
): KalmanResult {
  const state = startOf(prior, strength, names);
  const { mean, covariance } = state;
  const n = mean.length;
  const { takeOutcome, takeReadings } = groupTaker(state, names, around);
  const daySd = DAY_SD * Math.exp(around.lnDaySd);
  const gainAt = names.indexOf('weekGain');
  const dayLnNow: number[] = [];
  const surprises: KalmanResult['surprises'] = [];

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
      const carried = carryOver(group, reading.now, lift, nominal - reading.now.straightLn, tired);
      tired = carried.after;
      group.carriedLn = carried.carriedLn;
      return takeOutcome(group, reading);
    });
    takeAll(takeReadings);
    return effects;
  };

  let shaken = 0;
  sessions.forEach((session, at) => {
    const weeks = (session.day - (sessions[at - 1] ?? session).day) / 7;
    advance(state, gainAt + 2, weeks, around.lnWeekSd);
    shaken = stillShaken(shaken, weeks);
    const chance = fallChance(weeks, shaken);
    const before = state.now();
    const effects = takeSession(session, at, 0, daySd * daySd * (1 + BAD_DAY.share * (BAD_DAY.sd ** 2 - 1)));
    if (chance > 0 && effects.some(({ surprise }) => surprise < FALL_ASKED)) {
      // A day far below what was expected is read twice more, as a bad day and as one after a fall; of all three the moments are kept.
      const usual = state.now();
      state.goOnFrom(before);
      takeSession(session, at, BAD_DAY.mean * daySd, (BAD_DAY.sd * daySd) ** 2);
      const bad = state.now();
      state.goOnFrom(before);
      mean[0]! -= LEAST_FALL_LN + FURTHER_FALL_LN;
      covariance[0]! += FURTHER_FALL_LN ** 2;
      takeSession(session, at, 0, daySd * daySd);
      const fallen = state.now();
      const states = [usual, bad, fallen];
      const chances = [(1 - chance) * USUAL_DAY.share, (1 - chance) * BAD_DAY.share, chance];
      const lnJoint = states.map((then, k) => Math.log(chances[k]!) + then.lnEvidence);
      const { weights, lnSum } = weightsOfLn(lnJoint);
      const shares = [...weights];
      state.goOnFrom({ ...mixedNormal(states, shares), lnEvidence: lnSum });
      shaken = shares[2]! + (1 - shares[2]!) * shaken;
    }
    surprises.push(...effects);
    dayLnNow.push(mean[0]! + mean[1]!);
  });
  // Kept at the population's tiring, so that every lifter's own can scale it.
  for (const { groups } of sessions)
    for (const group of groups) group.carriedLn *= Math.exp(-around.lnTiring);
  return { ...state.now(), dayLn: dayLnNow, surprises };
}

/** Surprises below so many standard deviations let a fall be thought of. */
const FALL_ASKED = -2;

/** What is believed before any set: nothing of one hangs on another. */
function startOf(
  prior: Prior,
  strength: { meanLn: LnKg; sdLn: LnRatio },
  names: readonly ParameterName[],
): NormalState {
  const n = names.length + 2;
  const state = new NormalState(n);
  state.mean[0] = strength.meanLn;
  state.covariance[0] = strength.sdLn ** 2;
  names.forEach((name, k) => {
    state.mean[k + 2] = prior.mean[name];
    state.covariance[(k + 2) * n + k + 2] = prior.sd[name] ** 2;
  });
  return state;
}

/** Time passes: strength changes, and with it what hangs on its gain. `gainIndex` below 2: no gain in the state. */
function advance(
  { mean, covariance }: NormalState,
  gainIndex: number,
  weeks: number,
  lnWeekSd: number,
): void {
  const n = mean.length;
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

import { tiringOf } from '../effort/Tiring.ts';
import { type Lift, populationShape } from '../lifter/populationShape.ts';
import { cholesky } from '../numeric/cholesky.ts';
import { type Effort, flattened, importanceSample, type NormalShape } from '../numeric/importanceSample.ts';
import { nearerPeak } from '../numeric/nearerPeak.ts';
import { activeParameters } from './activeParameters.ts';
import { gridFilter, type NewestSession } from './gridFilter.ts';
import { type KalmanResult, kalmanPass } from './kalmanPass.ts';
import { drift, type Lattice } from './lattice.ts';
import { modelsOf, type RiggingTables } from './modelsOf.ts';
import { type ParameterName, type Parameters, type Prior, strengthPrior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { LiftModel } from './readGroup.ts';
import { tabulateResponse } from './response.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { type Session, sessionsOf } from './sessions.ts';
import { setModel } from './setModel.ts';
import { readWorkUps } from './workUps.ts';

/** What is asked: a lifter, a lift and everything that was logged of it. */
export interface StrengthQuestion {
  lift: Lift;
  /** The straight lift in which strength is counted: no bands, no chains. */
  reference: Rigging;
  bodyMassKg: number;
  sets: readonly SetEvidence[];
  /** The day for which strength is wanted, counted like the days of the sets. */
  onDay: number;
  prior: Prior;
}

/** One of the weighted answers: parameters, and ln strength on the day asked for. */
export interface Particle {
  parameters: Parameters;
  weight: number;
  strength: Lattice;
  newest: NewestSession;
}

/** All that is believed of one lifter in one lift. */
export interface StrengthPosterior {
  particles: Particle[];
  /** Number of equally weighted answers that the particles are worth. */
  effective: number;
  sessions: Session[];
  /** Given all sets before it: how surprising each set was (standard deviations), how far it moved ln strength. */
  surprises: { set: number; surprise: number; movedLn: number }[];
  /** Sets that no strength explains, such as a start above lockout: left out. */
  leftOut: number[];
  /** How many sets there are, left out or not. */
  setCount: number;
  lift: LiftModel;
  riggings: ReadonlyMap<Rigging, RiggingTables>;
  /** Parameters that the log tells of, and what was believed of all of them before it. */
  active: ParameterName[];
  prior: Prior;
  /** What was believed of ln strength before any set. */
  start: { meanLn: number; sdLn: number };
  /** The day that the particles' strength is for. */
  onDay: number;
}

/** A short log is soon read, so it is given more answers than a long one. */
const SESSIONS_READ = 12_000;
/**
 * Where a log is so unlike the model that few answers would carry all the weight, the weights are flattened until they are
 * worth so many: an interval then is wider than the model alone would give it, since the model is in doubt.
 */
const LEAST_WORTH = 50;
/** The first proposal is this much wider than the normal approximation, so that its tails are never thinner. */
const WIDER = 1.15;
/** Passes of the Kalman filter that linearise about what the one before found. */
const PASSES = 5;
/** From the third pass on they go only this share of the way: else they swing about what they look for. */
const SHARE_OF_WAY = 0.5;
/** The passes go no farther than this many standard deviations of the prior: beyond it lines lead astray. */
const FARTHEST = 2.5;

/**
 * Strength and shape of one lifter from the whole log. A Kalman filter proposes where the parameters may lie, a step of
 * Newton brings that nearer to where they are likeliest; for each proposal the exact grid filter gives the probability of
 * the log and the distribution of strength, and the proposals are weighted by it (importance sampling). Deterministic.
 * Without any sets the prior comes back.
 */
export function estimateStrength(question: StrengthQuestion): StrengthPosterior {
  const { lift, sets, onDay, prior } = question;
  const liftModel = liftModelOf(lift, question.reference);
  const { models, riggings } = modelsOf(sets, liftModel);
  const sessions = sessionsOf(sets, models);
  readWorkUps(sessions);
  const active = activeParameters(sessions, liftModel);
  const strength = strengthPrior(lift);
  const start = { meanLn: Math.log(question.bodyMassKg) + strength.meanLn, sdLn: strength.sdLn };
  const found = propose(sessions, liftModel, prior, start, active);
  const answer = (x: Float64Array) => {
    const parameters = { ...prior.mean };
    let lnPrior = 0;
    active.forEach((name, i) => {
      parameters[name] = x[i]!;
      lnPrior -= 0.5 * ((x[i]! - prior.mean[name]) / prior.sd[name]) ** 2;
    });
    const { lnEvidence, newest } = gridFilter(sessions, liftModel, start, parameters, false);
    return { parameters, newest, lnPosterior: lnPrior + lnEvidence };
  };
  const results: ReturnType<typeof answer>[] = [];
  const peak = nearerPeak(proposalOf(found, prior, active), (x) => answer(x).lnPosterior);
  const sample = importanceSample(
    { mean: peak.mean, root: peak.root.map((value) => WIDER * value) },
    active.length === 0 ? { count: 1, rounds: 1, enough: 1 } : effortFor(sessions.length),
    (x) => {
      const result = answer(x);
      results.push(result);
      return result.lnPosterior;
    },
  );
  const { weights, effective } = flattened(sample.weights, LEAST_WORTH);
  const lastDay = sessions[sessions.length - 1]?.day ?? onDay;
  return {
    particles: results.map(({ parameters, newest }, i) => ({
      parameters,
      weight: weights[i]!,
      strength: drift(newest.after, (onDay - lastDay) / 7, parameters),
      newest,
    })),
    effective,
    sessions,
    surprises: found.kalman.surprises.flatMap(({ session, group, surprise, movedLn }) =>
      sessions[session]!.groups[group]!.members.map((set) => ({ set, surprise, movedLn })),
    ),
    leftOut: models.flatMap((model, i) => (model === null ? i : [])),
    setCount: sets.length,
    lift: liftModel,
    riggings,
    active,
    prior,
    start,
    onDay,
  };
}

/** Answers are asked for about the Kalman filter's, then about those found before; many small rounds find the way. */
function effortFor(sessions: number): Effort {
  return { count: 30, rounds: 20, enough: Math.min(Math.max(SESSIONS_READ / sessions, 60), 250) };
}

/** The lift's population model with the straight lift of one lifter's own range. */
export function liftModelOf(lift: Lift, reference: Rigging): LiftModel {
  const shape = populationShape(lift);
  const tiring = tiringOf(lift);
  // Without bands and chains the limit does not depend on the mass: any will do.
  const straight = tabulateResponse(reference, shape, tiring, ANY_KG, ANY_KG);
  return { shape, tiring, reference: setModel(straight, reference.start, Math.log(ANY_KG)) };
}
const ANY_KG = 100;

interface Proposed {
  kalman: KalmanResult;
  around: Parameters;
  hyper: { name: ParameterName; sd: number }[];
}

/** Where the parameters may lie: passes of the Kalman filter, with the two standard deviations found by a parabola each. */
function propose(
  sessions: readonly Session[],
  lift: LiftModel,
  prior: Prior,
  start: { meanLn: number; sdLn: number },
  active: ParameterName[],
): Proposed {
  const around = { ...prior.mean };
  let dayLn: number[] | null = null;
  const pass = () => kalmanPass(sessions, lift, prior, start, active, around, dayLn);
  let kalman = pass();
  const moveThere = (share: number) =>
    kalman.names.forEach((name, k) => {
      const reach = FARTHEST * prior.sd[name];
      const to = prior.mean[name] + Math.min(Math.max(kalman.mean[k + 2]! - prior.mean[name], -reach), reach);
      around[name] += share * (to - around[name]);
    });
  for (let i = 1; i < PASSES; i++) {
    moveThere(i < 2 ? 1 : SHARE_OF_WAY);
    dayLn = kalman.dayLn;
    kalman = pass();
  }
  const hyper: Proposed['hyper'] = [];
  for (const name of ['lnDaySd', 'lnWeekSd'] as const) {
    if (!active.includes(name)) continue;
    const density = (value: number) => {
      around[name] = value;
      return pass().lnEvidence - 0.5 * ((value - prior.mean[name]) / prior.sd[name]) ** 2;
    };
    const peak = parabolaPeak(density, prior.mean[name], prior.sd[name]);
    around[name] = peak.at;
    hyper.push({ name, sd: Math.min(peak.sd, prior.sd[name]) });
  }
  kalman = pass();
  moveThere(1);
  return { kalman, around, hyper };
}

/** Top of a smooth ln density by the parabola through three points, and the standard deviation that its bend stands for. */
function parabolaPeak(
  density: (x: number) => number,
  from: number,
  step: number,
): { at: number; sd: number } {
  const [low, middle, high] = [density(from - step), density(from), density(from + step)];
  const bend = (low + high - 2 * middle) / (step * step);
  const slope = (high - low) / (2 * step);
  if (!(bend < 0)) return { at: from + Math.sign(slope) * step, sd: step };
  const to = Math.min(Math.max(-slope / bend, -2 * step), 2 * step);
  return { at: from + to, sd: 1 / Math.sqrt(-bend) };
}

function proposalOf({ kalman, around, hyper }: Proposed, prior: Prior, active: ParameterName[]): NormalShape {
  const n = active.length;
  const covariance = new Float64Array(n * n);
  const stateSize = kalman.names.length + 2;
  active.forEach((a, i) => {
    const own = hyper.find(({ name }) => name === a);
    if (own) {
      covariance[i * n + i] = own.sd ** 2;
      return;
    }
    const row = kalman.names.indexOf(a) + 2;
    active.forEach((b, j) => {
      const column = kalman.names.indexOf(b) + 2;
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

/** Equally likely answers by even steps through the weights. */
export function evenly(particles: readonly Particle[], count: number): Particle[] {
  let before = 0;
  let at = 0;
  return Array.from({ length: count }, (_, i) => {
    while (at < particles.length - 1 && before + particles[at]!.weight < (i + 0.5) / count) {
      before += particles[at]!.weight;
      at++;
    }
    return particles[at]!;
  });
}

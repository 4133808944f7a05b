import { tiringOf } from '../effort/Tiring.ts';
import { type Lift, populationShape } from '../lifter/populationShape.ts';
import { doubted, type Effort, flattened, importanceSample } from '../numeric/importanceSample.ts';
import { nearerPeak } from '../numeric/nearerPeak.ts';
import type { Kg, LnKg, LnRatio } from '../numeric/quantity.ts';
import { activeParameters } from './activeParameters.ts';
import { gridFilter, type NewestSession } from './gridFilter.ts';
import { drift, type Lattice } from './lattice.ts';
import { modelsOf, type RiggingTables } from './modelsOf.ts';
import { lnPrior, type ParameterName, type Parameters, type Prior, strengthPrior } from './parameters.ts';
import { propose } from './propose.ts';
import type { Rigging } from './Rigging.ts';
import type { LiftModel } from './readGroup.ts';
import { isOfShape } from './readShape.ts';
import { type ShapesTold, tabulateResponse } from './response.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { type Session, sessionsOf } from './sessions.ts';
import { setModel } from './setModel.ts';
import { readStops } from './stops.ts';
import { type UnitSlip, unitSlips } from './unitSlips.ts';
import { readWorkUps } from './workUps.ts';

/** What is asked: a lifter, a lift and everything that was logged of it. */
export interface StrengthQuestion {
  lift: Lift;
  /** The straight lift in which strength is counted: no bands, no chains. */
  reference: Rigging;
  bodyMassKg: Kg;
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
  /**
   * Given all sets before it, and for speeds what was made and missed that day: how surprising each set was (standard
   * deviations), how far it moved ln strength.
   */
  surprises: { set: number; surprise: number; movedLn: LnRatio }[];
  /** Sets that no strength explains, such as a start above lockout: left out. */
  leftOut: number[];
  /** Sets that look as if they had been written down in another unit: left out until somebody has looked. */
  slips: UnitSlip[];
  /** How many sets there are, left out or not. */
  setCount: number;
  lift: LiftModel;
  riggings: ReadonlyMap<Rigging, RiggingTables>;
  /** Parameters that the log tells of, and what was believed of all of them before it. */
  active: ParameterName[];
  prior: Prior;
  /** What was believed of ln strength before any set. */
  start: { meanLn: LnKg; sdLn: LnRatio };
  /** The day that the particles' strength is for. */
  onDay: number;
}

/** A short log is soon read, so it is given more answers than a long one. */
const SESSIONS_READ = 7_000;
/** In a log however long answers worth so many are looked for. */
const LEAST_ENOUGH = 40;
/**
 * Where a log is so unlike the model that few answers would carry all the weight, the weights are flattened until they are
 * worth so many: an interval then is wider than the model alone would give it, since the model is in doubt.
 */
const LEAST_WORTH = 50;
/** By so many answers' worth the weights are doubted: tails that a few hundred answers hardly reach would else be cut off. */
const DOUBT = 110;

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
  const slips = unitSlips(sets, models, liftModel, prior);
  const slipped = new Set(slips.flatMap((slip) => slip.sets));
  const sessions = sessionsOf(
    sets,
    models.map((model, i) => (slipped.has(i) ? null : model)),
  );
  readWorkUps(sessions);
  readStops(sessions);
  const active = activeParameters(sessions, liftModel);
  const strength = strengthPrior(lift);
  const start = { meanLn: Math.log(question.bodyMassKg) + strength.meanLn, sdLn: strength.sdLn };
  const { shape, surprises } = propose(sessions, liftModel, prior, start, active);
  const answer = (x: Float64Array) => {
    const parameters = { ...prior.mean };
    let lnBefore = 0;
    active.forEach((name, i) => {
      parameters[name] = x[i]!;
      lnBefore += lnPrior(prior, name, x[i]!);
    });
    const { lnEvidence, newest } = gridFilter(sessions, liftModel, start, parameters, false);
    return { parameters, newest, lnPosterior: lnBefore + lnEvidence };
  };
  const results: ReturnType<typeof answer>[] = [];
  const peak = nearerPeak(shape, (x) => answer(x).lnPosterior);
  const sample = importanceSample(
    peak,
    active.map(widerThanFound),
    active.length === 0 ? { count: 1, rounds: 1, enough: 1 } : effortFor(sessions.length),
    (x) => {
      const result = answer(x);
      results.push(result);
      return result.lnPosterior;
    },
  );
  const { weights, effective } = flattened(doubted(sample, DOUBT).weights, LEAST_WORTH);
  const particles = results.map(({ parameters, newest }, i) => ({
    parameters,
    weight: weights[i]!,
    strength: strengthOn(onDay, sessions, newest, parameters),
    newest,
  }));
  return {
    particles,
    effective,
    sessions,
    surprises: surprises.flatMap(({ session, group, surprise, movedLn }) =>
      sessions[session]!.groups[group]!.members.map((set) => ({ set, surprise, movedLn })),
    ),
    leftOut: models.flatMap((model, i) => (model === null ? i : [])),
    slips,
    setCount: sets.length,
    lift: liftModel,
    riggings,
    active,
    prior,
    start,
    onDay,
  };
}

/** What the same log says of another day, on or after its newest session: what `estimateStrength` would answer for that day. */
export function carriedTo(posterior: StrengthPosterior, onDay: number): StrengthPosterior {
  const { particles, sessions } = posterior;
  const carried = particles.map((particle) => {
    const strength = strengthOn(onDay, sessions, particle.newest, particle.parameters);
    return { ...particle, strength };
  });
  return { ...posterior, particles: carried, onDay };
}

function strengthOn(
  onDay: number,
  sessions: readonly Session[],
  { after }: NewestSession,
  parameters: Parameters,
): Lattice {
  const lastDay = sessions[sessions.length - 1]?.day ?? onDay;
  return drift(after, (onDay - lastDay) / 7, parameters);
}

/**
 * How much wider than a normal approximation is looked for a parameter: those of the shape trail off slowly, the held rebound
 * most, since far out its logit hardly changes what a rep does.
 */
function widerThanFound(name: ParameterName): number {
  if (name === 'heldRebound') return 1.7;
  return isOfShape(name) ? 1.3 : 1.15;
}

/** Answers are asked for about the Kalman filter's, then about those found before; many small rounds find the way. */
function effortFor(sessions: number): Effort {
  return { count: 30, rounds: 20, enough: Math.min(Math.max(SESSIONS_READ / sessions, LEAST_ENOUGH), 400) };
}

/** The lift's population model with the straight lift of one lifter's own range. */
export function liftModelOf(lift: Lift, reference: Rigging, told: ShapesTold = 'all'): LiftModel {
  const shape = populationShape(lift);
  const tiring = tiringOf(lift);
  // Without bands and chains the limit does not depend on the mass: any will do.
  const straight = tabulateResponse(reference, shape, tiring, ANY_KG, ANY_KG, told);
  return { shape, tiring, reference: setModel(straight, reference.start, Math.log(ANY_KG), 0), told };
}
const ANY_KG = 100;

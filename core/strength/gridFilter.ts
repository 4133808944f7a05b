import type { LnKg, LnRatio } from '../numeric/quantity.ts';
import { ownRoom, type Room, turningRoom } from '../numeric/room.ts';
import { fallChance, stillShaken } from './change.ts';
import { drifter, type Lattice, normalLattice, STEP_LN, sampled, trim, withFall } from './lattice.ts';
import { BAD_DAY, DAY_FORMS } from './noise.ts';
import { DAY_SD, type Parameters } from './parameters.ts';
import { type LiftModel, type ReadModel, readerOf } from './readGroup.ts';
import { sessionLikelihood } from './sessionLikelihood.ts';
import type { Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

/** What one set of parameters makes of all sessions. */
export interface GridResult {
  lnEvidence: number;
  newest: NewestSession;
  /** Session by session, kept only when asked for: strength after it, how likely each strength made it, and the share that fell before it. */
  filtered: Lattice[];
  likelihoods: Lattice[];
  fallShares: number[];
}

/** Strength on a day before its sets, but for a fall before it: how probable one is, and how probable that one lately was. */
export interface BeforeSession {
  strength: Lattice;
  fallChance: number;
  shaken: number;
  /** One of the newest: no later set tells whether strength fell before it. */
  isLate: boolean;
}

/** What one set of parameters makes of the newest session: strength on its day before and after it, and how likely it was. */
export interface NewestSession {
  before: BeforeSession;
  after: Lattice;
  /** Probability that strength lately fell. */
  shaken: number;
  lnEvidence: number;
}

interface TakenSession extends NewestSession {
  likelihood: Lattice;
  /** Chance of a fall before it; nought where nothing spoke for one and none was looked for. */
  fallShare: number;
}

/**
 * The exact filter of ln strength on a grid, for given parameters: it drifts between sessions, each session's own
 * form stands beside it, and every set of the session multiplies its likelihood in. Nothing is taken to be normal.
 */
export function gridFilter(
  sessions: readonly Session[],
  lift: LiftModel,
  strength: { meanLn: LnKg; sdLn: LnRatio },
  parameters: Parameters,
  keep: boolean,
): GridResult {
  const room = keep ? ownRoom : passing;
  const take = sessionTaker(lift, parameters, room);
  const drifted = drifter(parameters, room);
  const start = priorLattice(strength);
  let newest: NewestSession = {
    before: { strength: start, fallChance: 0, shaken: 0, isLate: false },
    after: start,
    shaken: 0,
    lnEvidence: 0,
  };
  let lnEvidence = 0;
  let lastDay = sessions[0]?.day ?? 0;
  const newestDay = sessions[sessions.length - 1]?.day ?? 0;
  const filtered: Lattice[] = [];
  const likelihoods: Lattice[] = [];
  const fallShares: number[] = [];
  for (const session of sessions) {
    const weeks = (session.day - lastDay) / 7;
    lastDay = session.day;
    const isLate = session.day > newestDay - LATE_DAYS;
    const taken = take(beforeSession(newest, weeks, drifted, isLate), session);
    newest = taken;
    lnEvidence += taken.lnEvidence;
    if (keep) {
      filtered.push(taken.after);
      likelihoods.push(taken.likelihood);
      fallShares.push(taken.fallShare);
    }
  }
  const { before, after, shaken, lnEvidence: newestLn } = newest;
  newest = {
    before: { ...before, strength: copyOf(before.strength) },
    after: copyOf(after),
    shaken,
    lnEvidence: newestLn,
  };
  return { lnEvidence, newest, filtered, likelihoods, fallShares };
}

/** What was after a session stays while the next is taken: drifted, weighed, and both once more after a fall. */
const passing = turningRoom(8);

/** What is believed `weeks` after a session. */
export function beforeSession(
  { after, shaken }: Pick<NewestSession, 'after' | 'shaken'>,
  weeks: number,
  drifted: (state: Lattice, weeks: number) => Lattice,
  isLate: boolean,
): BeforeSession {
  const still = stillShaken(shaken, weeks);
  return {
    strength: drifted(after, weeks),
    fallChance: fallChance(weeks, still),
    shaken: still,
    isLate,
  };
}

function copyOf({ first, weights }: Lattice): Lattice {
  return { first, weights: weights.slice() };
}

/**
 * A fall is looked for where the lowest strength that was believed possible makes the session so many times likelier than what was
 * believed: else it could hardly show, and the grid would only be longer. Before the newest sessions it is always thought of: what is
 * believed of today has to leave room for one that light sets do not show.
 */
const LOWER_LIKELIER = 4;
const LATE_DAYS = 14;

/** For one set of parameters: takes a session into what was believed of strength on its day. */
export function sessionTaker(
  lift: LiftModel,
  parameters: Parameters,
  room: Room,
): (before: BeforeSession, session: Session) => TakenSession {
  const dayForm = dayFormKernel(DAY_SD * Math.exp(parameters.lnDaySd));
  const read: (model: SetModel) => ReadModel = readerOf(parameters, lift);
  const form = dayForm.weights;
  const weigh = ({ first, weights }: Lattice, session: Session) => {
    const count = weights.length;
    const { values, lnScale } = sessionLikelihood(
      session,
      read,
      parameters,
      first + dayForm.first,
      // Some more than needed, so that `means` may take them abreast.
      count + form.length + ABREAST - 2,
    );
    const likelihood = means(values, form, room(count));
    const product = room(count);
    let sum = 0;
    for (let i = 0; i < count; i++) {
      product[i] = likelihood[i]! * weights[i]!;
      sum += product[i]!;
    }
    return { first, likelihood, product, sum, lnEvidence: Math.log(sum) + lnScale };
  };
  return (before, session) => {
    const { strength, fallChance: chance, shaken, isLate } = before;
    let weighed = chance > 0 && isLate ? null : weigh(strength, session);
    const looked = weighed === null || (chance > 0 && weighed.likelihood[0]! > LOWER_LIKELIER * weighed.sum);
    if (looked) weighed = weigh(withFall(strength, chance, room), session);
    const { first, likelihood, product, sum, lnEvidence } = weighed!;
    const fell = looked ? 1 - ((1 - chance) * expected(strength, likelihood, first)) / sum : 0;
    return {
      before,
      after: trim({ first, weights: product }, sum),
      shaken: fell + (1 - fell) * shaken,
      lnEvidence,
      likelihood: { first, weights: likelihood },
      fallShare: looked ? chance : 0,
    };
  };
}

/** The mean over a distribution of what a longer list holds for it, from `first` on. */
function expected({ first: from, weights }: Lattice, values: Float64Array, first: number): number {
  // Both stand on one grid; `first` need not be a whole number.
  const ahead = Math.round(from - first);
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i]! * values[i + ahead]!;
  return sum;
}

/**
 * Means of the values by a kernel, from each of the first ones on, as many as there is room for; `ABREAST` at a time, since one
 * sum alone waits for itself.
 */
function means(values: Float64Array, kernel: Float64Array, result: Float64Array): Float64Array {
  const count = result.length;
  for (let i = 0; i < count; i += ABREAST) {
    let first = 0;
    let second = 0;
    let third = 0;
    let fourth = 0;
    let a = values[i]!;
    let b = values[i + 1]!;
    let c = values[i + 2]!;
    for (let k = 0; k < kernel.length; k++) {
      const weight = kernel[k]!;
      const d = values[i + k + 3]!;
      first += weight * a;
      second += weight * b;
      third += weight * c;
      fourth += weight * d;
      a = b;
      b = c;
      c = d;
    }
    result[i] = first;
    if (i + 1 < count) result[i + 1] = second;
    if (i + 2 < count) result[i + 2] = third;
    if (i + 3 < count) result[i + 3] = fourth;
  }
  return result;
}
const ABREAST = 4;

const priors = new WeakMap<object, Lattice>();

function priorLattice(strength: { meanLn: LnKg; sdLn: LnRatio }): Lattice {
  const lattice = priors.get(strength) ?? normalLattice(strength.meanLn, strength.sdLn);
  priors.set(strength, lattice);
  return lattice;
}

/** The day's own form about the average: mostly near, at times a day that went wrong. */
function dayFormKernel(sd: number): Lattice {
  const down = Math.ceil(((3 * BAD_DAY.sd - BAD_DAY.mean) * sd) / STEP_LN);
  const up = Math.ceil((Math.max(3.5, 3 * BAD_DAY.sd + BAD_DAY.mean) * sd) / STEP_LN);
  return sampled(-down, down + up + 1, (i) => {
    const z = ((i - down) * STEP_LN) / sd;
    return DAY_FORMS.reduce((sum, form) => {
      const own = (z - form.mean) / form.sd;
      return sum + (form.share / form.sd) * Math.exp(-0.5 * own * own);
    }, 0);
  });
}

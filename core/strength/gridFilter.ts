import { ownRoom, type Room, turningRoom } from '../numeric/room.ts';
import { drifter, type Lattice, normalLattice, STEP_LN, sampled, trim } from './lattice.ts';
import { BAD_DAY_BELOW, BAD_DAY_FACTOR, BAD_DAY_SHARE } from './noise.ts';
import { DAY_SD, type Parameters } from './parameters.ts';
import { type LiftModel, type ReadModel, readerOf } from './readGroup.ts';
import { sessionLikelihood } from './sessionLikelihood.ts';
import type { Session } from './sessions.ts';
import type { SetModel } from './setModel.ts';

/** What one set of parameters makes of all sessions. */
export interface GridResult {
  lnEvidence: number;
  newest: NewestSession;
  /** After each session, and how likely each strength made that session: kept only when asked for. */
  filtered: Lattice[];
  likelihoods: Lattice[];
}

/** What one set of parameters makes of the newest session: strength on its day before and after it, and how likely it was. */
export interface NewestSession {
  before: Lattice;
  after: Lattice;
  lnEvidence: number;
}

/**
 * The exact filter of ln strength on a grid, for given parameters: it drifts between sessions, each session's own
 * form stands beside it, and every set of the session multiplies its likelihood in. Nothing is taken to be normal.
 */
export function gridFilter(
  sessions: readonly Session[],
  lift: LiftModel,
  strength: { meanLn: number; sdLn: number },
  parameters: Parameters,
  keep: boolean,
): GridResult {
  const room = keep ? ownRoom : passing;
  const take = sessionTaker(lift, parameters, room);
  const drifted = drifter(parameters, room);
  const before = priorLattice(strength);
  let newest: NewestSession = { before, after: before, lnEvidence: 0 };
  let lnEvidence = 0;
  let lastDay = sessions[0]?.day ?? 0;
  const filtered: Lattice[] = [];
  const likelihoods: Lattice[] = [];
  for (const session of sessions) {
    const ahead = drifted(newest.after, (session.day - lastDay) / 7);
    lastDay = session.day;
    const smooth = keep ? new Float64Array(ahead.weights.length) : null;
    newest = take(ahead, session, smooth);
    lnEvidence += newest.lnEvidence;
    if (smooth !== null) {
      filtered.push(newest.after);
      likelihoods.push({ first: ahead.first, weights: smooth });
    }
  }
  const { lnEvidence: newestLn } = newest;
  newest = { before: copyOf(newest.before), after: copyOf(newest.after), lnEvidence: newestLn };
  return { lnEvidence, newest, filtered, likelihoods };
}

/** A session is filtered from what stood before it, drifted or not, into what stands after it. */
const passing = turningRoom(3);

function copyOf({ first, weights }: Lattice): Lattice {
  return { first, weights: weights.slice() };
}

/**
 * For one set of parameters: takes a session into what was believed of strength on its day. `smooth`, where given, is
 * filled with how likely each strength made the session.
 */
export function sessionTaker(
  lift: LiftModel,
  parameters: Parameters,
  room: Room,
): (before: Lattice, session: Session, smooth?: Float64Array | null) => NewestSession {
  const dayForm = dayFormKernel(DAY_SD * Math.exp(parameters.lnDaySd));
  const read: (model: SetModel) => ReadModel = readerOf(parameters, lift);
  const form = dayForm.weights;
  return (before, session, smooth = null) => {
    const { first, weights } = before;
    const count = weights.length;
    const { values, lnScale } = sessionLikelihood(
      session,
      read,
      parameters,
      first + dayForm.first,
      // Some more than needed, so that `means` may take them abreast.
      count + form.length + ABREAST - 2,
    );
    const product = means(values, form, room(count));
    smooth?.set(product);
    let sum = 0;
    for (let i = 0; i < count; i++) {
      product[i]! *= weights[i]!;
      sum += product[i]!;
    }
    return {
      before,
      after: trim({ first, weights: product }, sum),
      lnEvidence: Math.log(sum) + lnScale,
    };
  };
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

function priorLattice(strength: { meanLn: number; sdLn: number }): Lattice {
  const lattice = priors.get(strength) ?? normalLattice(strength.meanLn, strength.sdLn);
  priors.set(strength, lattice);
  return lattice;
}

/** The day's own form about the average: mostly near, at times a day that went wrong. */
function dayFormKernel(sd: number): Lattice {
  const down = Math.ceil(((BAD_DAY_BELOW + 3 * BAD_DAY_FACTOR) * sd) / STEP_LN);
  const up = Math.ceil((Math.max(3.5, 3 * BAD_DAY_FACTOR - BAD_DAY_BELOW) * sd) / STEP_LN);
  return sampled(-down, down + up + 1, (i) => {
    const z = ((i - down) * STEP_LN) / sd;
    const bad = (z + BAD_DAY_BELOW) / BAD_DAY_FACTOR;
    return (
      (1 - BAD_DAY_SHARE) * Math.exp(-0.5 * z * z) +
      (BAD_DAY_SHARE / BAD_DAY_FACTOR) * Math.exp(-0.5 * bad * bad)
    );
  });
}

import { evenNormals } from '../numeric/evenNormals.ts';
import { ownRoom } from '../numeric/room.ts';
import { weightsOfLn } from '../numeric/weightsOfLn.ts';
import { activeParameters } from './activeParameters.ts';
import { carryOver } from './carryOver.ts';
import type { Particle, StrengthPosterior } from './estimateStrength.ts';
import { beforeSession, sessionTaker } from './gridFilter.ts';
import { drift, drifter, meanLnOf } from './lattice.ts';
import { middleParameters } from './middleParameters.ts';
import { modelWith } from './modelsOf.ts';
import { type ParameterName, type Prior, parameterNames } from './parameters.ts';
import { type LiftModel, readerOf } from './readGroup.ts';
import type { SetEvidence } from './SetEvidence.ts';
import { type Session, sessionsWith } from './sessions.ts';

/** Answers that weigh less than this cannot be seen in any figure. */
const NEGLIGIBLE = 1e-7;
/** At least so many answers where a parameter is told of for the first time. */
const SPREAD_OVER = 120;

/**
 * Takes a newly logged set into what is believed, without starting over: every answer keeps its parameters and its
 * strength from before the newest session; that session is filtered again with the new set, and the answer's weight
 * changes by how much likelier or unlikelier it then makes the session (sequential importance sampling). A parameter
 * that no set had told of is first spread over the answers as the prior has it.
 *
 * Answers only get new weights and are never moved, and surprises are those of the estimate before. A full estimate is due
 * when `effective` has fallen below half of what the last one gave, when weeks of sets have come in this way, and
 * after the first set in equipment, from a start or with bands that are new to the lifter. Tables of a new rigging, or of masses
 * beyond those it had, are made on the way and take some hundredths of a second more. Throws RangeError for a set
 * from before the newest session.
 */
export function addSet(posterior: StrengthPosterior, set: SetEvidence): StrengthPosterior {
  const { lift, prior, setCount } = posterior;
  const newestDay = posterior.sessions[posterior.sessions.length - 1]?.day;
  if (newestDay !== undefined && set.day < newestDay)
    throw new RangeError('a set from before the newest session needs a full estimate');
  const { model, riggings } = modelWith(posterior.riggings, set, lift);
  const after = { ...posterior, riggings, setCount: setCount + 1 };
  if (model === null) return { ...after, leftOut: [...posterior.leftOut, setCount] };

  const sessions = sessionsWith(posterior.sessions, set, setCount, model);
  const told = activeParameters(sessions, lift);
  const added = told.filter((name) => !posterior.active.includes(name));
  const spread = spreadOver(posterior.particles, added, prior);
  const session = sessions[sessions.length - 1]!;
  tire(session, spread, lift);
  const onDay = Math.max(posterior.onDay, set.day);
  const isNew = newestDay !== set.day;
  const weighed = spread.map((particle) => {
    const { parameters, newest } = particle;
    const before = isNew
      ? beforeSession(newest, (set.day - (newestDay ?? set.day)) / 7, drifter(parameters, ownRoom), true)
      : newest.before;
    const taken = sessionTaker(lift, parameters, ownRoom)(before, session);
    return {
      lnWeight: Math.log(particle.weight) + taken.lnEvidence - (isNew ? 0 : newest.lnEvidence),
      moved: {
        parameters,
        strength: drift(taken.after, (onDay - set.day) / 7, parameters),
        newest: taken,
      },
    };
  });
  const { weights, effective } = weightsOfLn(weighed.map(({ lnWeight }) => lnWeight));
  const particles = weighed.map(({ moved }, i) => ({ ...moved, weight: weights[i]! }));
  return {
    ...after,
    particles,
    effective,
    sessions,
    active: parameterNames.filter((name) => posterior.active.includes(name) || told.includes(name)),
    onDay,
  };
}

/** The answers that count; where parameters are told of for the first time, with values of these drawn from the prior. */
function spreadOver(
  all: readonly Particle[],
  added: readonly ParameterName[],
  { mean, sd }: Prior,
): Particle[] {
  const particles = all.filter(({ weight }) => weight > NEGLIGIBLE);
  if (added.length === 0) return particles;
  const copies = Math.ceil(SPREAD_OVER / particles.length);
  const normals = evenNormals(copies * particles.length, added.length);
  return normals.map((normal, i) => {
    const particle = particles[i % particles.length]!;
    const parameters = { ...particle.parameters };
    added.forEach((name, k) => {
      parameters[name] = mean[name] + sd[name] * normal[k]!;
    });
    return { ...particle, parameters, weight: particle.weight / copies };
  });
}

/** Writes what the session's sets before it had left of tiredness into its last group, at the middle of all answers. */
function tire({ groups }: Session, particles: readonly Particle[], lift: LiftModel): void {
  const middle = middleParameters(particles);
  const read = readerOf(middle, lift);
  const lnStrength = particles.reduce((sum, { weight, newest }) => sum + weight * meanLnOf(newest.after), 0);
  let tired = { fast: 0, slow: 0 };
  let carriedLn = 0;
  for (const group of groups) {
    const reading = read(group.model);
    const carried = carryOver(group, reading, lift, lnStrength - reading.straightLn, tired);
    tired = carried.after;
    carriedLn = carried.carriedLn;
  }
  groups[groups.length - 1]!.carriedLn = carriedLn * Math.exp(-middle.lnTiring);
}

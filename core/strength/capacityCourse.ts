import { repsAndPart } from '../effort/repsAndPart.ts';
import { repTable } from '../effort/repTable.ts';
import type { Lift } from '../lifter/populationShape.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { maxBar } from '../rep/maxBar.ts';
import { type Belief, beliefOf, sdOfBelief } from './belief.ts';
import type { Draw } from './Draw.ts';
import { centralDraw, drawCapability } from './drawCapability.ts';
import { drawsOf } from './drawsOf.ts';
import { drawTiring } from './drawTiring.ts';
import { estimateStrength } from './estimateStrength.ts';
import type { Prior } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';

/** A lifter's log in one lift, and what is believed of them beside it. */
export interface CapacityQuestion {
  lift: Lift;
  reference: Rigging;
  bodyMassKg: number;
  movedBodyKg: number;
  /** Oldest first. */
  sets: readonly SetEvidence[];
  /** Equally likely answers by the whole log. */
  whole: readonly Draw[];
  /** What was believed of this lifter before any set. */
  prior: Prior;
}

/** What one stretch of the log tells of work capacity by itself. */
export interface CapacityStretch {
  /** First and last day. */
  fromDay: number;
  toDay: number;
  /** Sets that tell how strength is lost within a set. */
  setsThatTell: number;
  /** Null where they tell too little. */
  told: CapacityTold | null;
}

export interface CapacityTold {
  lnTiring: Belief;
  /** Reps of a rested set at each of `CAPACITY_SHARES` of the straight maximum, with the part of the next one. */
  reps: Belief[];
}

export interface CapacityCourse {
  /** Oldest first, one after the other; none overlaps another. */
  stretches: CapacityStretch[];
  /** Probability that capacity is better in the newest stretch that tells than in the oldest; null: fewer than two tell. */
  better: number | null;
  /** What that says. */
  change: 'rose' | 'fell' | 'cannotTell';
}

export const CAPACITY_SHARES = [0.9, 0.8] as const;
/** Twelve weeks: a meet's preparation with its heavier and lighter weeks; in less, few logs tell anything (judgement). */
const STRETCH_DAYS = 84;
/** A season: a year and a little more, so that its ends are a year apart. */
const STRETCHES = 5;
/** Fewer sets of several reps are an anecdote (judgement). */
const FEWEST_SETS = 5;
/** Where a range is no narrower than this share of what it was before, hardly anything was told. */
const HARDLY_NARROWER = 0.85;
/** A rise, or a fall, is stated where it is so probable: of lifters who stay the same one in ten would hear of either. */
const SURE = 0.95;
/** Answers of each stretch. */
const DRAWS = 200;

/**
 * Work capacity over the season: tiring estimated anew from each stretch of the log alone. What is believed before it is what
 * was believed before any set, but for the middle of tiring, which is the whole log's: a stretch that tells little stays near
 * the lifter's own, and may lie as far from it as lifters lie from each other. The other parameters are not held at what the
 * whole log says of them: that counts every set twice, and came out too sure of itself (docs/model.md). Reps are those of the lifter in the
 * middle of the whole log, so that from stretch to stretch tiring alone differs.
 */
export function capacityCourse(question: CapacityQuestion): CapacityCourse {
  const central = centralDraw(question.whole);
  const { mean, sd } = question.prior;
  const { lnTiring, tiringBend } = central;
  const prior = { mean: { ...mean, lnTiring, tiringBend }, sd };
  const repsOf = repsByTiring(question, central);
  const found = stretchesOf(question.sets).map(({ fromDay, toDay, sets }) => {
    const setsThatTell = sets.filter(tells).length;
    const tirings = setsThatTell < FEWEST_SETS ? null : tiringsOf(question, sets, toDay, prior);
    return { fromDay, toDay, setsThatTell, tirings };
  });
  const telling = found.flatMap(({ tirings }) => (tirings === null ? [] : [tirings.map(lnOf)]));
  const better = telling.length < 2 ? null : shareBelow(telling[telling.length - 1]!, telling[0]!);
  return {
    stretches: found.map(({ tirings, ...stretch }) => ({
      ...stretch,
      told: tirings && {
        lnTiring: beliefOf(tirings.map(lnOf)),
        reps: repsOf.map((reps) => beliefOf(tirings.map(reps))),
      },
    })),
    better,
    change: changeBy(better),
  };
}

function changeBy(better: number | null): CapacityCourse['change'] {
  if (better === null) return 'cannotTell';
  return better >= SURE ? 'rose' : better <= 1 - SURE ? 'fell' : 'cannotTell';
}

/** Stretches back from the newest set, none that begins and ends before the oldest one. */
function stretchesOf(sets: readonly SetEvidence[]) {
  const [first, last] = [sets[0], sets[sets.length - 1]];
  if (first === undefined || last === undefined) return [];
  return Array.from({ length: STRETCHES }, (_, i) => {
    const toDay = last.day - (STRETCHES - 1 - i) * STRETCH_DAYS;
    const fromDay = toDay - STRETCH_DAYS + 1;
    return { fromDay, toDay, sets: sets.filter(({ day }) => fromDay <= day && day <= toDay) };
  }).filter(({ toDay }) => toDay >= first.day);
}

/** Several reps, or reps left, tell of tiring; a single with nothing left does not. */
function tells({ reps, made, repsInReserve }: SetEvidence): boolean {
  return made > 1 || (made === 1 && reps > 1) || (repsInReserve ?? 0) > 0;
}

/** What of a draw tells how it tires. */
type OwnTiring = Pick<Draw, 'lnTiring' | 'tiringBend'>;

function lnOf({ lnTiring }: OwnTiring): number {
  return lnTiring;
}

/** Equally likely tirings by a stretch alone; null where they hardly differ from what was believed before. */
function tiringsOf(
  { lift, reference, bodyMassKg }: CapacityQuestion,
  sets: readonly SetEvidence[],
  onDay: number,
  prior: Prior,
): OwnTiring[] | null {
  const { particles } = estimateStrength({ lift, reference, bodyMassKg, sets, onDay, prior });
  const draws = drawsOf(particles, DRAWS);
  return sdOfBelief(beliefOf(draws.map(lnOf))) > HARDLY_NARROWER * prior.sd.lnTiring ? null : draws;
}

/** For each share of the maximum: reps by tiring, for the lifter in the middle of the whole log. */
function repsByTiring({ lift, reference, movedBodyKg }: CapacityQuestion, central: Draw) {
  const capability = drawCapability(central, lift, reference, {
    ...reference,
    movedBodyKg,
    equipment: 'raw',
  });
  const straight = { ...reference.load, barKg: 0 };
  const barKg = maxBar(straight, capability)?.barKg ?? 0;
  return CAPACITY_SHARES.map((share) => {
    const compiled = compileLoad({ ...straight, barKg: share * barKg });
    const table = repTable(compiled, capability, drawTiring(central, lift).loweringS);
    return ({ lnTiring, tiringBend }: OwnTiring) =>
      table === null ? 0 : repsAndPart(table, drawTiring({ ...central, lnTiring, tiringBend }, lift));
  });
}

/** Probability that one of the first values lies below one of the second. */
function shareBelow(first: readonly number[], second: readonly number[]): number {
  const below = first.reduce((sum, value) => sum + second.filter((other) => other > value).length, 0);
  return below / (first.length * second.length);
}

import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { addSet } from '#core/strength/addSet.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { widened } from '#core/strength/reweighed.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { straightTotalsOf } from '#core/strength/straightTotals.ts';
import { bodyMassOf } from '#reckon/lifter/assembleCapability.ts';
import { answersOf, type BarKg, barKgOf, maxKgOn } from './answersOf.ts';
import type { LiftOnDay } from './estimateLift.ts';
import { evidenceReader } from './evidenceReader.ts';
import type { Remembered } from './weighAndRemember.ts';
import type { TakenIn } from './withTakenIn.ts';

/** The newest sets of a lift, to be taken into what is remembered of it. */
export interface NewestAsked {
  of: LiftOnDay;
  /** All sets from the last day that is remembered up to the day asked for. */
  sets: LoggedSet[];
  /** How many sets of the lift the whole log has, struck ones too. */
  setsInLog: number;
  basis: string;
}

export interface NewestTaken {
  taken: TakenIn;
  /** Answers were only weighed anew and not found anew: they may be off until the whole log is weighed. */
  wholeIsDue: boolean;
  remembered: Remembered;
}

/** More at once are no longer much faster than the whole. */
const MOST_TAKEN = 12;
/** "Weeks of sets" of addSet's advice. */
const LONGEST_DAYS = 14;
/** Answers may lose so much of their worth before they are to be found anew. */
const LEAST_WORTH = 0.5;
/**
 * Answers worth fewer than so many equal ones lie too near together: they would make the estimate surer than the log is. Where
 * sets go so far against the log their weights are flattened, which widens it, until the whole log is weighed.
 */
const FEWEST_ANSWERS = 15;

/**
 * Takes the newest sets into what is remembered of a lift, in hundredths of a second. Null where that takes the whole
 * log: something else has changed too, or the sets are not simply the newest.
 */
export function takeNewest(known: Remembered, asked: NewestAsked): NewestTaken | null {
  const { of } = asked;
  const { records, posterior: before } = known;
  const reader = evidenceReader(records, of.lifterId, of.lift, known.riggings);
  const fresh = freshSets(known, asked);
  if (fresh === null || fresh.some(reader.isBest) || hasNewBest(known, of)) return null;
  const isNewSetup = fresh.some((set) => !reader.hasRead(set));
  const evidence = fresh.map(reader.read);
  if (!evidence.every((read) => typeof read !== 'string')) return null;
  const barKg = barKgOf(records, of.lifterId, of.lift);
  const added = addAll(before, of.on, barKg, evidence, fresh);
  if (added === null) return null;
  const { observations } = added;
  const isFar = added.posterior.effective < FEWEST_ANSWERS;
  const posterior = isFar ? widened(added.posterior, FEWEST_ANSWERS) : added.posterior;
  const takenIn = known.takenIn + fresh.length;
  const { doneOn, order } = fresh.at(-1)!;
  return {
    taken: {
      ...answersOf(posterior, of.on, barKg),
      setCount: posterior.setCount,
      takenIn,
      lastSetOn: doneOn,
      observations,
    },
    wholeIsDue:
      isNewSetup ||
      isFar ||
      posterior.active.length > before.active.length ||
      posterior.effective < LEAST_WORTH * known.whole.effective ||
      dayNumber(doneOn) - known.whole.day >= LONGEST_DAYS,
    remembered: {
      ...known,
      on: of.on,
      posterior,
      takenIn,
      seen: new Set([...known.seen, ...fresh.map(({ id }) => id)]),
      last: { doneOn, order },
    },
  };
}

/** Sets that came after everything remembered, oldest first; null where that is not all that has changed. */
function freshSets(known: Remembered, { of, sets, setsInLog, basis }: NewestAsked): LoggedSet[] | null {
  const fresh = sets.filter(({ id }) => !known.seen.has(id));
  const { doneOn, order } = known.last;
  const isNext =
    basis === known.basis &&
    known.seen.size + fresh.length === setsInLog &&
    known.bodyMassKg === bodyMassOf(known.records, of.lifterId, of.on).massKg &&
    fresh.length > 0 &&
    fresh.length <= MOST_TAKEN &&
    fresh.every((set) => set.doneOn > doneOn || (set.doneOn === doneOn && set.order > order));
  return isNext ? fresh : null;
}

/** A best counts from its day on. */
function hasNewBest({ records, on }: Remembered, of: LiftOnDay): boolean {
  return records.best.some(
    ({ lifterId, lift, doneOn }) =>
      lifterId === of.lifterId && lift === of.lift && doneOn > on && doneOn <= of.on,
  );
}

function addAll(
  before: StrengthPosterior,
  on: string,
  barKg: BarKg,
  evidence: readonly SetEvidence[],
  sets: readonly LoggedSet[],
): { posterior: StrengthPosterior; observations: StrengthEstimate['observations'] } | null {
  let posterior: StrengthPosterior = { ...before, onDay: dayNumber(on) };
  let kg = maxKgOn(before, on, barKg).median;
  const observations: StrengthEstimate['observations'] = [];
  for (const [i, one] of evidence.entries()) {
    const index = posterior.setCount;
    posterior = addSet(posterior, one);
    const nowKg = maxKgOn(posterior, on, barKg).median;
    const straight = straightTotalsOf({ ...posterior, sessions: posterior.sessions.slice(-1) })[index];
    // A set that no strength explains is told of by the whole estimate.
    if (straight === undefined || !Number.isFinite(nowKg)) return null;
    observations.push({
      setId: sets[i]!.id,
      on: dateOfDay(one.day),
      says: straight.says,
      straightKg: barKg(straight.lnTotal, one.day),
      surprise: null,
      movedKg: nowKg - kg,
    });
    kg = nowKg;
  }
  return { posterior, observations };
}

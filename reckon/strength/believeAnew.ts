import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { carriedTo } from '#core/strength/estimateStrength.ts';
import type { Prior } from '#core/strength/parameters.ts';
import { underPrior } from '#core/strength/underPrior.ts';
import { bodyMassOf } from '#reckon/lifter/assembleCapability.ts';
import { barKgOf } from './answersOf.ts';
import type { LiftOnDay } from './estimateLift.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';
import type { Remembered } from './weighAndRemember.ts';
import { wholeAnswersOf } from './wholeAnswersOf.ts';

/** What was learned of lifters like this one since their estimate was made, or the day that it is now asked for. */
export interface AnewAsked {
  of: LiftOnDay;
  prior: Prior;
  /** What the estimate is to rest on beside the prior: what it rested on before. */
  basis: string;
  /** How many sets of the lift the whole log has, struck ones too. */
  setsInLog: number;
}

/** What another prior or day changes in an estimate. Where each set acted and how it surprised stay as they were first seen. */
export type BelievedAnew = ReturnType<typeof wholeAnswersOf>;

/** Answers worth fewer equal ones than that were found too far from what is believed now. */
const FEWEST_ANSWERS = 25;

/**
 * The estimate that is remembered under another prior, or for another day, in a fraction of the time of the whole. Null where
 * more has changed, or where the two priors lie so far apart for this lifter that it takes the whole log.
 */
export function believeAnew(
  known: Remembered,
  { of, prior, basis, setsInLog }: AnewAsked,
): { told: BelievedAnew; remembered: Remembered } | null {
  if (known.basis !== basis || known.seen.size !== setsInLog || !isAlikeOn(known, of)) return null;
  const posterior = underPrior(carriedTo(known.posterior, dayNumber(of.on)), prior);
  if (posterior.effective < FEWEST_ANSWERS) return null;
  const barKg = barKgOf(known.records, of.lifterId, of.lift);
  return {
    told: wholeAnswersOf(posterior, of.on, barKg),
    remembered: { ...known, on: of.on, posterior, whole: { ...known.whole, effective: posterior.effective } },
  };
}

/** Whether the records say the same of two days: what the lifter weighs, how far the bar goes, which bests count. */
function isAlikeOn(
  { on, last, records, bodyMassKg }: Remembered,
  { lifterId, lift, on: day }: LiftOnDay,
): boolean {
  if (day === on) return true;
  const [first, second] = [on, day].toSorted() as [string, string];
  const reference = (then: string) =>
    JSON.stringify(riggingOf(records, lifterId, lift, competitionSetup(lift), then));
  return (
    day >= last.doneOn &&
    bodyMassKg === bodyMassOf(records, lifterId, day).massKg &&
    reference(on) === reference(day) &&
    !records.best.some(
      (best) =>
        best.lifterId === lifterId && best.lift === lift && best.doneOn > first && best.doneOn <= second,
    )
  );
}

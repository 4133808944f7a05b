import type { Prior } from '#core/strength/parameters.ts';
import { underPrior } from '#core/strength/underPrior.ts';
import { barKgOf } from './answersOf.ts';
import type { LiftOnDay } from './estimateLift.ts';
import type { Remembered } from './weighAndRemember.ts';
import { wholeAnswersOf } from './wholeAnswersOf.ts';

/** What was learned of lifters like this one since their estimate was made. */
export interface AnewAsked {
  of: LiftOnDay;
  prior: Prior;
  /** What the estimate is to rest on beside the prior: what it rested on before. */
  basis: string;
  /** How many sets of the lift the whole log has, struck ones too. */
  setsInLog: number;
}

/** What another prior changes in an estimate. Where each set acted and how it surprised stay as they were first seen. */
export type BelievedAnew = ReturnType<typeof wholeAnswersOf>;

/** Answers worth fewer equal ones than that were found too far from what is believed now. */
const FEWEST_ANSWERS = 25;

/**
 * The estimate that is remembered under another prior, in a fraction of the time of the whole. Null where more has changed,
 * or where the two priors lie so far apart for this lifter that it takes the whole log.
 */
export function believeAnew(
  known: Remembered,
  { of, prior, basis, setsInLog }: AnewAsked,
): { told: BelievedAnew; remembered: Remembered } | null {
  if (known.basis !== basis || known.on !== of.on || known.seen.size !== setsInLog) return null;
  const posterior = underPrior(known.posterior, prior);
  if (posterior.effective < FEWEST_ANSWERS) return null;
  const barKg = barKgOf(known.records, of.lifterId, of.lift);
  return {
    told: wholeAnswersOf(posterior, of.on, barKg),
    remembered: { ...known, posterior, whole: { ...known.whole, effective: posterior.effective } },
  };
}

import { dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import type { Prior } from '#core/strength/parameters.ts';
import { type LiftOnDay, weighLift } from './estimateLift.ts';
import type { Riggings } from './evidenceReader.ts';

/** What it takes to go on from an estimate: plain data, which may travel between threads whole. */
export interface Remembered {
  /** The same as long as nothing that it rests on has changed, but for sets that were added. */
  basis: string;
  records: ClubRecords;
  on: string;
  /** Ids of the sets of the lift up to its day, struck ones too. */
  seen: Set<string>;
  riggings: Riggings;
  posterior: StrengthPosterior;
  bodyMassKg: number;
  /** Of the last set, to tell what came after it. */
  last: { doneOn: string; order: number };
  /** How many sets were taken in alone since the whole log was weighed. */
  takenIn: number;
  /** The last day when the whole log was weighed, and what its answers were worth. */
  whole: { day: number; effective: number };
}

/** One lift with all that its estimate rests on. */
export interface WholeAsked {
  records: ClubRecords;
  /** All sets of the lift up to the day, struck ones too. */
  log: LoggedSet[];
  of: LiftOnDay;
  prior: Prior;
  basis: string;
}

/** An estimate by the whole log, and what it takes to go on from it; null where the log says nothing. */
export function weighAndRemember({
  records,
  log,
  of,
  prior,
  basis,
}: WholeAsked): { estimate: StrengthEstimate; remembered: Remembered } | null {
  const weighed = weighLift(records, log, of, prior);
  if (weighed === null) return null;
  const { estimate, posterior, riggings, last } = weighed;
  return {
    estimate,
    remembered: {
      basis,
      records,
      on: of.on,
      seen: new Set(log.map(({ id }) => id)),
      riggings,
      posterior,
      bodyMassKg: estimate.bodyMassKg,
      last,
      takenIn: 0,
      whole: { day: dayNumber(last.doneOn), effective: posterior.effective },
    },
  };
}

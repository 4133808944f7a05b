import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { estimateStrength, type StrengthPosterior } from '#core/strength/estimateStrength.ts';
import type { Prior } from '#core/strength/parameters.ts';
import { straightTotalsOf } from '#core/strength/straightTotals.ts';
import { bodyMassOf, type CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { type BarKg, barKgOf } from './answersOf.ts';
import { evidenceOf } from './evidenceOf.ts';
import type { Riggings } from './evidenceReader.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';
import { wholeAnswersOf } from './wholeAnswersOf.ts';

/** One lift of one lifter, as known on a day. */
export interface LiftOnDay {
  lifterId: string;
  lift: Lift;
  on: string;
}

/** An estimate with what it takes to go on from it. */
interface WeighedLift {
  estimate: StrengthEstimate;
  posterior: StrengthPosterior;
  riggings: Riggings;
  /** When the last set was done, and its place in that day. */
  last: Pick<LoggedSet, 'doneOn' | 'order'>;
}

/** Everything that a lifter's log says of one lift up to the day `on`; null where it says nothing. */
export function estimateLift(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  of: LiftOnDay,
  prior: Prior,
): StrengthEstimate | null {
  return weighLift(records, log, of, prior)?.estimate ?? null;
}

/** The same with what is needed to take later sets in alone. */
export function weighLift(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  { lifterId, lift, on }: LiftOnDay,
  prior: Prior,
): WeighedLift | null {
  const riggings: Riggings = new Map();
  const evidence = evidenceOf(records, log, lifterId, lift, on, riggings);
  const { last } = evidence;
  if (evidence.sets.length === 0 || last === null) return null;
  const body = bodyMassOf(records, lifterId, on);
  const onDay = dayNumber(on);
  const posterior = estimateStrength({
    lift,
    reference: riggingOf(records, lifterId, lift, competitionSetup(lift), on),
    bodyMassKg: body.massKg,
    sets: evidence.sets,
    onDay,
    prior,
  });
  const barKg = barKgOf(records, lifterId, lift);
  const estimate: StrengthEstimate = {
    lifterId,
    lift,
    setCount: evidence.sets.length,
    takenIn: 0,
    lastSetOn: dateOfDay(evidence.sets.at(-1)!.day),
    bodyMassKg: body.massKg,
    bodyMassKnown: body.known,
    ...wholeAnswersOf(posterior, on, barKg),
    observations: observationsOf(posterior, evidence, barKg),
    leftOut: [
      ...evidence.leftOut,
      ...posterior.leftOut.map((i) => ({
        id: evidence.ids[i]!,
        reason: 'No strength makes this lift as it is written down: look at its heights and its bar.',
      })),
    ],
    slips: posterior.slips.map(({ looksLike, sets }) => ({
      looksLike,
      ids: sets.toSorted((a, b) => a - b).map((i) => evidence.ids[i]!),
    })),
  };
  const { doneOn, order } = last;
  return { estimate, posterior, riggings, last: { doneOn, order } };
}

function observationsOf(
  posterior: StrengthPosterior,
  { sets, ids }: { sets: readonly { day: number }[]; ids: readonly string[] },
  barKg: BarKg,
): StrengthEstimate['observations'] {
  const straight = straightTotalsOf(posterior);
  return posterior.surprises
    .toSorted((a, b) => a.set - b.set)
    .map(({ set, surprise, movedLn }) => {
      const { day } = sets[set]!;
      const { lnTotal, says } = straight[set]!;
      const straightKg = barKg(lnTotal, day);
      return {
        setId: ids[set]!,
        on: dateOfDay(day),
        says,
        straightKg,
        surprise,
        movedKg: barKg(lnTotal + movedLn, day) - straightKg,
      };
    });
}

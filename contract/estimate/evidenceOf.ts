import { bodyMassOf, type CapabilityRecords } from '#contract/assemble/assembleCapability.ts';
import { CannotAssemble } from '#contract/assemble/CannotAssemble.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { setupKey } from '#contract/setupKey.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { RESERVE_UNSAID_REPS } from '#core/strength/noise.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { dayNumber } from './dayNumber.ts';
import { riggingOf } from './riggingOf.ts';
import { setFromBest } from './setFromBest.ts';

/** What the log and the bests of a lifter say of one lift, ready for the estimate. */
export interface LoggedEvidence {
  sets: SetEvidence[];
  /** Which record each of them is: a logged set's id, or a best's. */
  ids: string[];
  /** Records that could not be worked out, each with the reason in a sentence. */
  leftOut: { id: string; reason: string }[];
}

/** Everything up to the day `on`; struck sets do not count. A best that no logged set tells stands for a set with nothing left, and so does a logged single that is a best. */
export function evidenceOf(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  lifterId: string,
  lift: Lift,
  on: string,
): LoggedEvidence {
  const logged = log.filter(
    (set) => set.lifterId === lifterId && set.lift === lift && set.struckAt === null && set.doneOn <= on,
  );
  const known = new Set(logged.filter(({ made }) => made > 0).map(bestKey));
  const maxima = new Set(
    records.best.filter((best) => best.lifterId === lifterId && best.lift === lift).map(bestKey),
  );
  const bests = records.best
    .filter((best) => best.lifterId === lifterId && best.lift === lift && best.doneOn <= on)
    .filter((best) => !known.has(bestKey(best)))
    .map(setFromBest);
  const riggings = riggingsOf(records, lifterId, lift);
  const { movedBodyShare } = populationShape(lift);
  const result: LoggedEvidence = { sets: [], ids: [], leftOut: [] };
  const inOrder = [...logged, ...bests].sort((a, b) => a.doneOn.localeCompare(b.doneOn) || a.order - b.order);
  for (const set of inOrder) {
    const rigging = riggings(set.setup, set.doneOn);
    if (typeof rigging === 'string') {
      result.leftOut.push({ id: set.id, reason: rigging });
      continue;
    }
    const bodyMassKg = set.bodyMassKg ?? bodyMassOf(records, lifterId, set.doneOn).massKg;
    result.ids.push(set.id);
    result.sets.push({
      day: dayNumber(set.doneOn),
      rigging,
      barKg: set.setup.barKg,
      movedBodyKg: movedBodyShare * bodyMassKg,
      equipment: set.equipment,
      platform: set.platform,
      reps: set.reps,
      made: set.made,
      stoppedAtS: set.stoppedAtS,
      meanSpeedsMps: set.meanSpeedsMps,
      peakSpeedsMps: set.peakSpeedsMps,
      repsInReserve: set.repsInReserve ?? (isMaximum(set, maxima) ? NOTHING_LEFT : null),
      restS: set.restS,
    });
  }
  return result;
}

/** A best is a maximum: what is left is less than a rep, and nobody said too few, which the estimate would add. */
const NOTHING_LEFT = -RESERVE_UNSAID_REPS;

/** A single that is written down among the bests too. */
function isMaximum(
  set: Pick<LoggedSet, 'reps' | 'made' | 'doneOn' | 'lift' | 'equipment' | 'setup'>,
  maxima: ReadonlySet<string>,
): boolean {
  return set.reps === 1 && set.made === 1 && maxima.has(bestKey(set));
}

function bestKey({ doneOn, ...keyed }: Pick<LoggedSet, 'doneOn' | 'lift' | 'equipment' | 'setup'>): string {
  return `${doneOn} ${keyed.setup.barKg} ${setupKey(keyed)}`;
}

/**
 * One rigging for each setup and state of its bands: the tables of the estimate are made once for each. A band pulls as
 * the readings up to that day say; what was changed in the rack or in the lifter's heights since counts for all days.
 */
function riggingsOf(records: CapabilityRecords, lifterId: string, lift: Lift) {
  const known = new Map<string, Rigging | string>();
  const readOn = (bandPairId: string, on: string) =>
    records.bandReading.reduce(
      (latest, reading) =>
        reading.bandPairId === bandPairId && reading.takenOn <= on && reading.takenOn > latest
          ? reading.takenOn
          : latest,
      '',
    );
  return (setup: Setup, on: string): Rigging | string => {
    const state = setup.bands.map(({ bandPairId }) => readOn(bandPairId, on));
    const key = `${setupKey({ lift, equipment: 'raw', setup })} ${setup.rackId} ${state.join(' ')}`;
    let rigging = known.get(key);
    if (rigging === undefined) {
      try {
        rigging = riggingOf(records, lifterId, lift, setup, on);
      } catch (error) {
        if (!(error instanceof CannotAssemble)) throw error;
        rigging = error.message;
      }
      known.set(key, rigging);
    }
    return rigging;
  };
}

import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { setupKey } from '#contract/log/setupKey.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { RESERVE_UNSAID_REPS } from '#core/strength/noise.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { bodyMassOf, type CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { riggingOf } from './riggingOf.ts';

type Keyed = Pick<LoggedSet, 'doneOn' | 'lift' | 'equipment' | 'setup'>;

/** Reads what one lifter logged of one lift, set by set, by the records as they were given. */
export interface EvidenceReader {
  /** A set as evidence, or in a sentence why it is none. */
  read(set: LoggedSet): SetEvidence | string;
  /** Whether a set's rigging was read before: its tables are there. */
  hasRead(set: LoggedSet): boolean;
  /** Whether what was lifted is written down among the bests too. */
  isBest(set: Keyed): boolean;
}

/** Riggings by their setup and the state of its bands, or in a sentence why there is none. */
export type Riggings = Map<string, Rigging | string>;

/** What `known` holds is taken from there, and what is new is put in. */
export function evidenceReader(
  records: CapabilityRecords,
  lifterId: string,
  lift: Lift,
  known: Riggings = new Map(),
): EvidenceReader {
  const bests = records.best.filter((best) => best.lifterId === lifterId && best.lift === lift);
  const maxima = new Set(bests.map(bestKey));
  const riggings = riggingsOf(records, lifterId, lift, known);
  const { movedBodyShare } = populationShape(lift);
  const isBest = (set: Keyed) => maxima.has(bestKey(set));
  return {
    isBest,
    hasRead: ({ setup, doneOn }) => riggings.has(setup, doneOn),
    read(set) {
      const rigging = riggings.of(set.setup, set.doneOn);
      if (typeof rigging === 'string') return rigging;
      const bodyMassKg = set.bodyMassKg ?? bodyMassOf(records, lifterId, set.doneOn).massKg;
      // A single that is written down among the bests too is a maximum.
      const isMaximum = set.reps === 1 && set.made === 1 && isBest(set);
      return {
        day: dayNumber(set.doneOn),
        rigging,
        barKg: set.setup.barKg,
        barChecked: set.barChecked,
        movedBodyKg: movedBodyShare * bodyMassKg,
        equipment: set.equipment,
        platform: set.platform,
        reps: set.reps,
        made: set.made,
        stoppedAtS: set.stoppedAtS,
        meanSpeedsMps: set.meanSpeedsMps,
        peakSpeedsMps: set.peakSpeedsMps,
        repsInReserve: set.repsInReserve ?? (isMaximum ? NOTHING_LEFT : null),
        restS: set.restS,
      };
    },
  };
}

/** A best is a maximum: what is left is less than a rep, and nobody said too few, which the estimate would add. */
const NOTHING_LEFT = -RESERVE_UNSAID_REPS;

/** The same for a best and for the logged set that it was. */
export function bestKey({ doneOn, ...keyed }: Keyed): string {
  return `${doneOn} ${keyed.setup.barKg} ${setupKey(keyed)}`;
}

/**
 * One rigging for each setup and state of its bands: the tables of the estimate are made once for each. A band pulls as
 * the readings up to that day say; what was changed in the rack or in the lifter's heights since counts for all days.
 */
function riggingsOf(records: CapabilityRecords, lifterId: string, lift: Lift, known: Riggings) {
  const takenOn = new Map<string, string[]>();
  for (const { bandPairId, takenOn: day } of records.bandReading)
    takenOn.set(bandPairId, [...(takenOn.get(bandPairId) ?? []), day]);
  const readOn = (bandPairId: string, on: string) =>
    (takenOn.get(bandPairId) ?? []).reduce((latest, day) => (day <= on && day > latest ? day : latest), '');
  // Sets in the same setup mostly share it, and are many.
  const spelled = new Map<Setup, string>();
  const keyOf = (setup: Setup, on: string) => {
    const words = spelled.get(setup) ?? `${setupKey({ lift, equipment: 'raw', setup })} ${setup.rackId}`;
    spelled.set(setup, words);
    const state = setup.bands.map(({ bandPairId }) => readOn(bandPairId, on));
    return `${words} ${state.join(' ')}`;
  };
  const made = (setup: Setup, on: string) => {
    try {
      return riggingOf(records, lifterId, lift, setup, on);
    } catch (error) {
      if (!(error instanceof CannotAssemble)) throw error;
      return error.message;
    }
  };
  return {
    has: (setup: Setup, on: string) => known.has(keyOf(setup, on)),
    of(setup: Setup, on: string): Rigging | string {
      const key = keyOf(setup, on);
      const rigging = known.get(key) ?? made(setup, on);
      known.set(key, rigging);
      return rigging;
    },
  };
}

import type { ChangedRecord } from '#contract/day/changedRecord.ts';
import { capital } from './capital.ts';
import type { MassUnit } from './viewUnits.ts';
import { oneDecimal } from './written.ts';

/** How lifters and pairs are called, by their ids. */
export interface Called {
  lifter: (id: string) => string;
  pair: (id: string) => string;
}

/** What was changed since a day was worked out, a sentence each and none twice: "64-A was measured again.", "Emre weighs 82.4 kg." */
export function changedSentences(
  changes: readonly ChangedRecord[],
  called: Called,
  mass: MassUnit,
): string[] {
  return [...new Set(changes.map((change) => sentence(change, called, mass)))];
}

function sentence(change: ChangedRecord, called: Called, mass: MassUnit): string {
  const { kind, what, lifterId, bandPairId, massKg } = change;
  const who = lifterId === null ? '' : called.lifter(lifterId);
  switch (kind) {
    case 'day':
      return 'The plan of this day was changed.';
    case 'bandReading':
      return what === 'removed'
        ? `A reading of ${called.pair(bandPairId!)} was removed.`
        : `${called.pair(bandPairId!)} was measured again.`;
    case 'bodyMass':
      return massKg === null
        ? `A weighing of ${who} was removed.`
        : `${who} weighs ${oneDecimal(massKg, mass)} ${mass}.`;
    case 'liftHeights':
      return what === 'removed' ? `Bar heights of ${who} were removed.` : `${who} has new bar heights.`;
    case 'best':
      return what === 'new' ? `${who} has a new best.` : `A best of ${who} was ${what}.`;
    case 'restriction':
      return what === 'new' ? `${who} has a new restriction.` : `A restriction of ${who} was ${what}.`;
    case 'lifter':
      return `The details of ${who} were changed.`;
    default:
      if (change.outOfService) return `${capital(change.called)} is out of service.`;
      return `${capital(change.called)} ${what === 'new' ? 'is new' : `was ${what}`}.`;
  }
}

import type { SeatDifference } from '#contract/day/planDifference.ts';
import type { MassUnit } from './viewUnits.ts';
import { oneDecimal } from './written.ts';

/** What differs between two plans, lifter by lifter: "Emre 105 → 107.5 kg; Ilse other bands." */
export function differenceSentence(differences: readonly SeatDifference[], mass: MassUnit): string {
  if (differences.length === 0) return 'Every bar, band and rack is the same.';
  return `${differences.map((one) => `${one.name}: ${what(one, mass)}`).join('; ')}.`;
}

function what({ fromKg, toKg, otherSet, otherRack }: SeatDifference, mass: MassUnit): string {
  if (fromKg === null && toKg === null) return 'no loads';
  if (fromKg === null) return `${oneDecimal(toKg!, mass)} ${mass}, none before`;
  if (toKg === null) return `none, ${oneDecimal(fromKg, mass)} ${mass} before`;
  const said = [
    fromKg === toKg
      ? `${oneDecimal(toKg, mass)} ${mass} as before`
      : `${oneDecimal(fromKg, mass)} → ${oneDecimal(toKg, mass)} ${mass}`,
    otherSet ? 'other bands or chains' : '',
    otherRack ? 'another rack' : '',
  ];
  return said.filter((part) => part !== '').join(', ');
}

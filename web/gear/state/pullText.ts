import type { KnownHow } from '#contract/records/knownHow.ts';
import { signedText } from '#contract/words/signedText.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import type { PairPull } from './pairPull.ts';

/** A force written as the mass that weighs as much where the club stands, to a tenth. */
export function weightText(forceN: number, unit: MassUnit, gravityMps2: number): string {
  return signedText(fromSi(forceN / gravityMps2, unit), { decimals: 1 });
}

/** "43.6 to 46.8" */
export function intervalText({ low95N, high95N }: PairPull, unit: MassUnit, gravityMps2: number): string {
  return `${weightText(low95N, unit, gravityMps2)} to ${weightText(high95N, unit, gravityMps2)}`;
}

export const knownFrom: Record<PairPull['from'], KnownHow> = {
  scale: 'measured',
  readings: 'measured',
  oneBand: 'estimated',
  beyondReadings: 'estimated',
  width: 'notMeasured',
};

/** Where a pull comes from, in a sentence. */
export const fromWords: Record<PairPull['from'], string> = {
  scale: 'Read on a scale in this very hookup.',
  readings: "Worked out from both bands' readings and the geometry of the hookup.",
  oneBand: 'Only one band of the pair was read; the other is assumed to be the same: hang it too.',
  beyondReadings: 'The band is stretched further here than it was ever read: hang more weight on the scale.',
  width: 'Assumed from the width, since the bands were not measured: hang them from a scale.',
};

import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';

/** A force as the whole mass that weighs as much where the club stands: "4 kg". */
export function massText(newtons: number, unit: MassUnit, gravityMps2: number): string {
  return `${Math.round(fromSi(newtons / gravityMps2, unit))} ${unit}`;
}

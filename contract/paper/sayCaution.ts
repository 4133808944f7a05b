import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import { cautionSentence } from '#contract/words/cautionSentence.ts';
import { dateText } from '#contract/words/dateText.ts';
import { massText } from '#contract/words/massText.ts';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';

/** Gear by its labels: the club's own, or as a plan keeps it. */
type Named = { readonly [Sort in keyof PlanWords['gear']]: readonly { id: string; label: string }[] };

/** A caution in this club's labels and this view's units; forces as the mass that weighs as much. */
export function sayCaution(
  caution: PlanCaution,
  gear: Named,
  { mass, length, gravityMps2 }: { mass: MassUnit; length: LengthUnit; gravityMps2: number },
): string {
  return cautionSentence(caution, {
    bandPair: (id) => labelOf(gear.bandPair, id),
    anchor: (id) => labelOf(gear.anchor, id),
    chainPair: (id) => labelOf(gear.chainPair, id),
    bar: (id) => labelOf(gear.bar, id),
    collarPair: (id) => labelOf(gear.collarPair, id),
    box: (id) => labelOf(gear.box, id),
    rack: (id) => labelOf(gear.rack, id),
    height: (metres) => `${written(metres, length, length === 'cm' ? 0 : 1)} ${length}`,
    mass: (kg) => `${Number(fromSi(kg, mass).toFixed(1))} ${mass}`,
    force: (newtons) => massText(newtons, mass, gravityMps2),
    date: dateText,
  });
}

/** Gear that was removed before plans kept its label. */
function labelOf(list: readonly { id: string; label: string }[], id: string): string {
  return list.find((one) => one.id === id)?.label ?? 'no longer kept';
}

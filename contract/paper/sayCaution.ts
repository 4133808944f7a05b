import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { cautionSentence } from '#contract/words/cautionSentence.ts';
import { dateText } from '#contract/words/dateText.ts';
import { massText } from '#contract/words/massText.ts';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';

type Named = Pick<ClubRecords, 'bandPair' | 'anchor' | 'chainPair' | 'bar' | 'collarPair' | 'box' | 'rack'>;

/** A caution in this club's labels and this view's units; forces as the mass that weighs as much. */
export function sayCaution(
  caution: PlanCaution,
  records: Named,
  { mass, length, gravityMps2 }: { mass: MassUnit; length: LengthUnit; gravityMps2: number },
): string {
  return cautionSentence(caution, {
    bandPair: (id) => labelOf(records.bandPair, id),
    anchor: (id) => labelOf(records.anchor, id),
    chainPair: (id) => labelOf(records.chainPair, id),
    bar: (id) => labelOf(records.bar, id),
    collarPair: (id) => labelOf(records.collarPair, id),
    box: (id) => labelOf(records.box, id),
    rack: (id) => labelOf(records.rack, id),
    height: (metres) => `${written(metres, length, length === 'cm' ? 0 : 1)} ${length}`,
    mass: (kg) => `${Number(fromSi(kg, mass).toFixed(1))} ${mass}`,
    force: (newtons) => massText(newtons, mass, gravityMps2),
    date: dateText,
  });
}

/** Gear that was removed since keeps its place in what was worked out. */
function labelOf(list: readonly { id: string; label: string }[], id: string): string {
  return list.find((one) => one.id === id)?.label ?? 'no longer kept';
}

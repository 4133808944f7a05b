import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Start } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BoxPick } from './BoxPick.tsx';
import { heightWord, mostHeightM, usualHeightsM } from './startHeights.ts';

/** The height of a start, where it has one: a box is picked from those that the club can build, or another height typed. */
export function StartHeightField(props: {
  start: Start;
  boxes: readonly Box[];
  /** A height that cannot be read is null here: the form is not saved then. */
  onChange: (start: Start) => void;
}) {
  const { start, boxes, onChange } = props;
  const units = useUnits();
  if (!hasHeight(start.way)) return null;
  const setHeight = (heightM: number | null) => onChange({ ...start, heightM });
  const typed = (
    <NumberField
      label={heightWord[start.way]}
      valueSi={start.heightM}
      unit={units.length}
      minSi={0.005}
      maxSi={mostHeightM[start.way]}
      required
      ask={(m) => usualQuestion(m, units.length, heightWord[start.way], usualHeightsM[start.way])}
      onChange={setHeight}
    />
  );
  return start.way === 'box' && boxHeights(boxes).length > 0 ? (
    <BoxPick label="Box" boxes={boxes} heightM={start.heightM} onChange={setHeight}>
      {typed}
    </BoxPick>
  ) : (
    typed
  );
}

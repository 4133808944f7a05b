import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BoxPick } from './BoxPick.tsx';
import { StartWayField } from './StartWayField.tsx';
import { heightWord, mostHeightM, usualHeightsM } from './startHeights.ts';

/** How the way up begins, and its height. With `boxes` a box is picked from those that the club can build, or another height typed. */
export function StartFields(props: {
  lift: Lift;
  start: Start;
  boxes?: readonly Box[];
  /** A height that cannot be read is null here: the form is not saved then. */
  onChange: (start: Start) => void;
}) {
  const { lift, start, boxes = [], onChange } = props;
  const units = useUnits();
  const built = boxHeights(boxes);
  const setHeight = (heightM: number | null) => onChange({ ...start, heightM });
  const typed = hasHeight(start.way) && (
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
  return (
    <>
      <StartWayField lift={lift} start={start} built={built} onChange={onChange} />
      {start.way === 'box' && built.length > 0 ? (
        <BoxPick label="Box" boxes={boxes} heightM={start.heightM} onChange={setHeight}>
          {typed}
        </BoxPick>
      ) : (
        typed
      )}
    </>
  );
}

import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Lift } from '#contract/records/lift.ts';
import { ownBox, type StartAsked } from '#contract/records/method.ts';
import { ownBoxWord } from '#contract/season/depthWords.ts';
import { startWords } from '#contract/words/liftWords.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { StartHeightField } from '#web/setup/StartHeightField.tsx';
import { startOfWay } from '#web/setup/startOfWay.ts';

/** How a group of a method begins: the same for everybody, or each lifter of a squat on a box of their own. */
export function StartAskedFields(props: {
  lift: Lift;
  start: StartAsked;
  boxes: readonly Box[];
  /** A height that cannot be read does not come here. */
  onChange: (start: StartAsked) => void;
}) {
  const { lift, start, boxes, onChange } = props;
  const { length } = useUnits();
  const { minValue, maxValue } = ownBox.shape.aboveParallelM;
  return (
    <>
      <SelectField
        label="Start"
        value={start.way}
        options={[...startWords(lift), ...(lift === 'squat' ? [ownBoxWord] : [])]}
        onChange={(way) =>
          onChange(way === 'ownBox' ? { way, aboveParallelM: 0 } : startOfWay(way, boxHeights(boxes)))
        }
      />
      {start.way === 'ownBox' ? (
        <NumberField
          label="Box above parallel by"
          valueSi={start.aboveParallelM}
          unit={length}
          minSi={minValue ?? undefined}
          maxSi={maxValue ?? undefined}
          required
          hint="0 brings each lifter to parallel, less than 0 deeper. Each sits on the nearest box that the club can build."
          onChange={(aboveParallelM) =>
            aboveParallelM !== null && onChange({ way: 'ownBox', aboveParallelM })
          }
        />
      ) : (
        <StartHeightField
          start={start}
          boxes={boxes}
          onChange={(next) => next.heightM !== null && onChange(next)}
        />
      )}
    </>
  );
}

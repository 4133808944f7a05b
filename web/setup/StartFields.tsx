import { useState } from 'react';
import { type BuiltBox, boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { StartWayField } from './StartWayField.tsx';
import { heightWord, mostHeightM } from './startHeights.ts';

/** How the way up begins, and its height. With `boxes` a box is picked from those that the club can build, or another height typed. */
export function StartFields(props: {
  lift: Lift;
  start: Start;
  boxes?: readonly Box[];
  /** A height that cannot be read is null here: the form is not saved then. */
  onChange: (start: Start) => void;
}) {
  const { lift, start, onChange } = props;
  const units = useUnits();
  const built = boxHeights(props.boxes ?? []);
  const [asksOther, setAsksOther] = useState(false);
  const isBuilt = start.heightM !== null && boxOfHeight(built, start.heightM) !== undefined;
  const picksBox = start.way === 'box' && built.length > 0;
  const other = asksOther || !isBuilt;
  return (
    <>
      <StartWayField
        lift={lift}
        start={start}
        built={built}
        onChange={(next) => {
          setAsksOther(false);
          onChange(next);
        }}
      />
      {picksBox && (
        <SelectField
          label="Box"
          value={other ? otherHeight : key(start.heightM ?? 0)}
          options={boxOptions(built, units.length)}
          onChange={(picked) => {
            setAsksOther(picked === otherHeight);
            if (picked !== otherHeight) onChange({ way: 'box', heightM: Number(picked) / 1000 });
          }}
        />
      )}
      {hasHeight(start.way) && (!picksBox || other) && (
        <NumberField
          label={heightWord[start.way]}
          valueSi={start.heightM}
          unit={units.length}
          minSi={0.005}
          maxSi={mostHeightM[start.way]}
          required
          onChange={(heightM) => onChange({ ...start, heightM })}
        />
      )}
    </>
  );
}

function boxOptions(built: readonly BuiltBox[], unit: LengthUnit) {
  const options = built.map((box) => ({
    value: key(box.heightM),
    word: `${formatQuantity(box.heightM, unit)}: ${box.words.join(' and ')}`,
  }));
  return [...options, { value: otherHeight, word: "another height, not the club's boxes" }];
}

const otherHeight = 'other';

/** A height as the value of a choice: whole millimetres. */
function key(heightM: number): string {
  return String(Math.round(heightM * 1000));
}

import { type BuiltBox, boxHeights } from '#contract/day/boxHeights.ts';
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

/** How the way up begins, and its height. With `boxes` a box is picked from those that the club can build. */
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
  return (
    <>
      <StartWayField lift={lift} start={start} built={built} onChange={onChange} />
      {start.way === 'box' && built.length > 0 && (
        <SelectField
          label="Box"
          value={key(start.heightM)}
          options={boxOptions(built, start.heightM, units.length)}
          onChange={(mm) => onChange({ way: 'box', heightM: Number(mm) / 1000 })}
        />
      )}
      {hasHeight(start.way) && (start.way !== 'box' || built.length === 0) && (
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

function boxOptions(built: readonly BuiltBox[], heightM: number | null, unit: LengthUnit) {
  const options = built.map((box) => ({
    value: key(box.heightM),
    word: `${formatQuantity(box.heightM, unit)}: ${box.words.join(' and ')}`,
  }));
  if (options.some(({ value }) => value === key(heightM))) return options;
  const other = `${formatQuantity(heightM ?? 0, unit)}: not from the club's boxes`;
  return [{ value: key(heightM), word: other }, ...options];
}

/** A height as the value of a choice: whole millimetres. */
function key(heightM: number | null): string {
  return String(Math.round((heightM ?? 0) * 1000));
}

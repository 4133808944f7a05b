import { type ReactNode, useState } from 'react';
import { boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** A height out of those that the club's boxes build; `children` is the field for another one. */
export function BoxPick(props: {
  label: string;
  hint?: string;
  boxes: readonly Box[];
  heightM: number | null;
  /** What no height at all is called, where there may be none. */
  none?: string;
  onChange: (heightM: number | null) => void;
  children: ReactNode;
}) {
  const { heightM, none, onChange } = props;
  const units = useUnits();
  const built = boxHeights(props.boxes);
  const [asksOther, setAsksOther] = useState(false);
  const isNone = heightM === null && none !== undefined;
  const isBuilt = heightM !== null && boxOfHeight(built, heightM) !== undefined;
  const other = asksOther || !(isNone || isBuilt);
  const options = [
    ...(none === undefined ? [] : [{ value: noHeight, word: none }]),
    ...built.map((box) => ({
      value: key(box.heightM),
      word: `${formatQuantity(box.heightM, units.length)}: ${box.words.join(' and ')}`,
    })),
    { value: otherHeight, word: "another height, not the club's boxes" },
  ];
  return (
    <>
      <SelectField
        label={props.label}
        hint={props.hint}
        value={other ? otherHeight : isNone ? noHeight : key(heightM ?? 0)}
        options={options}
        onChange={(picked) => {
          setAsksOther(picked === otherHeight);
          if (picked === noHeight) onChange(null);
          else if (picked !== otherHeight) onChange(Number(picked) / 1000);
        }}
      />
      {other && props.children}
    </>
  );
}

const otherHeight = 'other';
const noHeight = 'none';

/** A height as the value of a choice: whole millimetres. */
function key(heightM: number): string {
  return String(Math.round(heightM * 1000));
}

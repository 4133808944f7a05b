import type { Box } from '#contract/records/gear.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { hasHeight, startWords } from '#web/parts/liftWords.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { boxHeights } from './boxHeights.ts';

/** Where a lift begins: the way, and its height; a box is picked from those the club can build. */
export function StartFields(props: {
  lift: Lift;
  start: Start;
  boxes: readonly Box[];
  onChange: (start: Start) => void;
}) {
  const { lift, start, onChange } = props;
  const units = useUnits();
  const built = boxHeights(props.boxes);
  const says = (heightM: number) => formatQuantity(heightM, units.length);
  const boxOptions = built.map((box) => ({
    value: key(box.heightM),
    word: `${says(box.heightM)}: ${box.words}`,
  }));
  const known = boxOptions.some((option) => option.value === key(start.heightM));
  const pickWay = (way: Start['way']) => {
    const firstHeight =
      way === 'box' ? (built[Math.floor(built.length / 2)]?.heightM ?? 0.36) : usualHeightM[way];
    onChange({ way, heightM: hasHeight(way) ? (firstHeight ?? 0.1) : null });
  };
  return (
    <>
      <SelectField label="Start" value={start.way} options={startWords(lift)} onChange={pickWay} />
      {start.way === 'box' && built.length > 0 && (
        <SelectField
          label="Box"
          value={known ? key(start.heightM) : 'none'}
          options={
            known
              ? boxOptions
              : [
                  { value: 'none', word: `${says(start.heightM ?? 0)}: not from the club's boxes` },
                  ...boxOptions,
                ]
          }
          onChange={(mm) => mm !== 'none' && onChange({ way: 'box', heightM: Number(mm) / 1000 })}
        />
      )}
      {hasHeight(start.way) && (start.way !== 'box' || built.length === 0) && (
        <NumberField
          label={heightOf[start.way] ?? 'Height'}
          valueSi={start.heightM}
          unit={units.length}
          minSi={0.005}
          maxSi={2}
          required
          onChange={(heightM) => heightM !== null && onChange({ way: start.way, heightM })}
        />
      )}
    </>
  );
}

/** A height as the value of a choice: whole millimetres. */
function key(heightM: number | null): string {
  return String(Math.round((heightM ?? 0) * 1000));
}

/** What is measured of a start that has a height. */
const heightOf: Partial<Record<Start['way'], string>> = {
  box: 'Box height',
  pins: 'Bar on the pins at',
  boards: 'Boards, thick',
  blocks: 'Discs raised by',
  deficit: 'Lifter raised by',
};

/** Heights to begin with. Common practice, no source. */
const usualHeightM: Partial<Record<Start['way'], number>> = {
  pins: 0.9,
  boards: 0.05,
  blocks: 0.1,
  deficit: 0.05,
};

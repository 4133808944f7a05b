import type { Lift, Start } from '#contract/records/lift.ts';
import { hasHeight, startWords } from '#web/parts/liftWords.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** How the way up begins, with the height of box, pins, boards, blocks or deficit where there is one. */
export function StartFields(props: { lift: Lift; start: Start; onChange: (start: Start) => void }) {
  const { lift, start, onChange } = props;
  const units = useUnits();
  return (
    <>
      <SelectField
        label="Start"
        value={start.way}
        options={startWords(lift)}
        onChange={(way) =>
          onChange({ way, heightM: hasHeight(way) ? (start.heightM ?? usualHeightM[way]) : null })
        }
      />
      {hasHeight(start.way) && (
        <NumberField
          label={heightWord[start.way]}
          valueSi={start.heightM}
          unit={units.length}
          minSi={0}
          maxSi={start.way === 'pins' ? 2.2 : start.way === 'box' ? 1 : 0.5}
          required
          onChange={(heightM) => onChange({ ...start, heightM })}
        />
      )}
    </>
  );
}

/** A height to begin typing from. */
export const usualHeightM: Record<Start['way'], number | null> = {
  free: null,
  paused: null,
  box: 0.36,
  pins: 1,
  boards: 0.05,
  blocks: 0.1,
  deficit: 0.05,
};

export const heightWord: Record<Start['way'], string> = {
  free: 'Height',
  paused: 'Height',
  box: 'Box height',
  pins: 'Bar on pins at',
  boards: 'Boards, thick',
  blocks: 'Discs raised by',
  deficit: 'Lifter raised by',
};

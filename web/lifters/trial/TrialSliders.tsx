import type { Start } from '#contract/records/lift.ts';
import { RangeField } from '#web/parts/RangeField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { heightWord } from '../StartFields.tsx';
import type { Trial } from './Trial.ts';

/** What one drags: the mass on the bar and, where there is one, the height of box, pins, boards, blocks or deficit. */
export function TrialSliders(props: {
  trial: Trial;
  onChange: (trial: Trial) => void;
  /** Heaviest bar that the slider reaches. */
  toKg: number;
}) {
  const { trial, onChange } = props;
  const { start } = trial;
  const units = useUnits();
  return (
    <div className="stack">
      <RangeField
        label="On the bar"
        valueSi={trial.barKg}
        unit={units.mass}
        minSi={0}
        maxSi={Math.ceil(props.toKg)}
        stepSi={0.5}
        onChange={(barKg) => onChange({ ...trial, barKg })}
      />
      {start.heightM !== null && (
        <RangeField
          label={heightWord[start.way]}
          valueSi={start.heightM}
          unit={units.length}
          minSi={startReach(start)[0]}
          maxSi={startReach(start)[1]}
          stepSi={0.005}
          onChange={(heightM) => onChange({ ...trial, start: { ...start, heightM } })}
        />
      )}
    </div>
  );
}

/** Lowest and highest start that the slider reaches (m). */
function startReach({ way }: Start): [number, number] {
  if (way === 'box') return [0.2, 0.6];
  if (way === 'pins') return [0.2, 1.9];
  return [0, 0.4];
}

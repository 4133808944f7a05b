import { RangeField } from '#web/parts/RangeField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { heightWord } from '#web/setup/startHeights.ts';
import { barStepKg, startReachM, startStepM, type Trial } from './Trial.ts';

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
        stepSi={barStepKg}
        onChange={(barKg) => onChange({ ...trial, barKg })}
      />
      {start.heightM !== null && (
        <RangeField
          label={heightWord[start.way]}
          valueSi={start.heightM}
          unit={units.length}
          minSi={startReachM(start)[0]}
          maxSi={startReachM(start)[1]}
          stepSi={startStepM}
          onChange={(heightM) => onChange({ ...trial, start: { ...start, heightM } })}
        />
      )}
    </div>
  );
}

import { useState } from 'react';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { barLimits } from '#web/setup/setDraft.ts';

/** Another bar for several alike sets at once. */
export function BarForm(props: {
  title: string;
  barKg: number;
  onSave: (barKg: number) => Promise<unknown>;
  onLeave: () => void;
}) {
  const units = useUnits();
  const [barKg, setBarKg] = useState<number | null>(props.barKg);
  return (
    <RecordForm
      title={props.title}
      onSave={async () => {
        if (barKg !== null) await props.onSave(barKg);
      }}
      onLeave={props.onLeave}
      leaveWord="Leave unchanged"
      wrong={null}
    >
      <NumberField
        label="On the bar"
        valueSi={barKg}
        unit={units.mass}
        {...barLimits}
        hint="Bar, discs and collars together. Reps and speeds of each set stay."
        onChange={setBarKg}
      />
    </RecordForm>
  );
}

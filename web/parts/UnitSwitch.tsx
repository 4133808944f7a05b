import { Choice } from './Choice.tsx';
import { lengthWords, massWords, useUnits } from './ViewUnits.tsx';

/** Switches the units of the view it stands in; the club keeps its own. */
export function UnitSwitch() {
  const units = useUnits();
  return (
    <div className="row screen-only">
      <Choice label="Mass in this view" options={massWords} value={units.mass} onChange={units.setMass} />
      <Choice
        label="Heights in this view"
        options={lengthWords}
        value={units.length}
        onChange={units.setLength}
      />
    </div>
  );
}

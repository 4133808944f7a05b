import { Choice } from './Choice.tsx';
import { lengthWords, massWords, useUnits } from './ViewUnits.tsx';

/** Switches the units of the view it stands in; the club keeps its own. */
export function UnitSwitch() {
  const units = useUnits();
  return (
    <div className="row screen-only unit-switch">
      <span className="small quiet">on this page</span>
      <Choice label="Mass on this page" options={massWords} value={units.mass} onChange={units.setMass} />
      <Choice
        label="Heights on this page"
        options={lengthWords}
        value={units.length}
        onChange={units.setLength}
      />
    </div>
  );
}

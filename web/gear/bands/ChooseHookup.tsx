import { useChosen } from '#web/gear/state/Chosen.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { RangeField } from '#web/parts/RangeField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** Which hookup and which bar height the numbers are for. */
export function ChooseHookup({ gear }: { gear: Gear }) {
  const { place, heightM, setHookupId, setHeightM } = useChosen(gear);
  const { length } = useUnits();
  if (place === null) {
    return <p className="quiet">With a hookup on a rack, each pair also shows what it gives there.</p>;
  }
  return (
    <div className="choose-hookup">
      <SelectField
        label="Hookup"
        value={place.hookup.id}
        options={gear.places.map(({ rack, hookup }) => ({
          value: hookup.id,
          word: `${rack.label}: ${hookup.label}`,
        }))}
        onChange={setHookupId}
      />
      <RangeField
        label="Bar height"
        valueSi={heightM}
        unit={length}
        minSi={0.1}
        maxSi={2.4}
        stepSi={0.01}
        onChange={setHeightM}
      />
    </div>
  );
}

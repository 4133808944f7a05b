import { BarHeightField } from '#web/gear/height/BarHeightField.tsx';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { SelectField } from '#web/parts/SelectField.tsx';

/** Which hookup and which bar height the numbers are for. */
export function ChooseHookup({ gear }: { gear: Gear }) {
  const { place, setHookupId } = useChosen(gear);
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
      <BarHeightField gear={gear} />
    </div>
  );
}

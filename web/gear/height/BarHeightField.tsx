import { useChosen } from '#web/gear/state/Chosen.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { RangeField } from '#web/parts/RangeField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** The bar height that the numbers of Gear are for, the same on all its pages. */
export function BarHeightField({ gear }: { gear: Gear }) {
  const { heightM, setHeightM } = useChosen(gear);
  const { length } = useUnits();
  return (
    <RangeField
      label="Bar height"
      valueSi={heightM}
      unit={length}
      minSi={0.1}
      maxSi={2.4}
      stepSi={0.01}
      onChange={setHeightM}
    />
  );
}

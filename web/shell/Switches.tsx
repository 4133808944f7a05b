import { Choice } from '#web/parts/Choice.tsx';
import { lengthWords, massWords, useUnits } from '#web/parts/ViewUnits.tsx';
import { useLight } from '#web/theme/useLight.ts';

/** Units and light of this device: at the head of a wide screen, at the foot of a phone, whose first screen is for the lifters. */
export function Switches() {
  const units = useUnits();
  const [light, setLight] = useLight();
  return (
    <div className="shell-switches screen-only">
      <Choice label="Mass on this device" options={massWords} value={units.mass} onChange={units.setMass} />
      <Choice
        label="Heights on this device"
        options={lengthWords}
        value={units.length}
        onChange={units.setLength}
      />
      <Choice label="Light" options={lightWords} value={light} onChange={setLight} />
    </div>
  );
}

const lightWords = [
  { value: 'auto', word: 'auto' },
  { value: 'day', word: 'day' },
  { value: 'night', word: 'night' },
] as const;

import type { BuiltBox } from '#contract/day/boxHeights.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { startWords } from '#contract/words/liftWords.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { startOfWay } from './startOfWay.ts';

/** How the way up begins; another way begins at its usual height, a box at the middle one of those that can be built. */
export function StartWayField(props: {
  lift: Lift;
  start: Start;
  built?: readonly BuiltBox[];
  onChange: (start: Start) => void;
}) {
  const { lift, start, built = [], onChange } = props;
  return (
    <SelectField
      label="Start"
      value={start.way}
      options={startWords(lift)}
      onChange={(way) => onChange(startOfWay(way, built))}
    />
  );
}

import { useId } from 'react';
import type { RecordOf } from '#contract/records/allKinds.ts';

/** Puts one more lifter at the end of a rack's order. */
export function AddLifter(props: {
  rackLabel: string;
  lifters: readonly RecordOf<'lifter'>[];
  onAdd: (lifterId: string) => void;
}) {
  const id = useId();
  if (props.lifters.length === 0) return null;
  return (
    <div className="add-lifter screen-only">
      <label className="only-read" htmlFor={id}>
        Put a lifter on {props.rackLabel}
      </label>
      <select id={id} className="input" value="" onChange={(event) => props.onAdd(event.target.value)}>
        <option value="" disabled>
          Put a lifter on {props.rackLabel}
        </option>
        {props.lifters.map((lifter) => (
          <option key={lifter.id} value={lifter.id}>
            {lifter.name}
          </option>
        ))}
      </select>
    </div>
  );
}

import { useId } from 'react';
import type { Unit } from '#core/units/units.ts';
import { NumberField } from './NumberField.tsx';

/** A number one drags, with a field for those who would rather type it. */
export function RangeField(props: {
  label: string;
  valueSi: number;
  unit: Unit;
  minSi: number;
  maxSi: number;
  /** Step of the slider; the field takes any number between. */
  stepSi: number;
  onChange: (valueSi: number) => void;
  hint?: string;
}) {
  const id = useId();
  return (
    <div className="range-field">
      <NumberField
        label={props.label}
        valueSi={props.valueSi}
        unit={props.unit}
        minSi={props.minSi}
        maxSi={props.maxSi}
        hint={props.hint}
        onChange={(valueSi) => valueSi !== null && props.onChange(valueSi)}
      />
      <label className="only-read" htmlFor={id}>
        {props.label}, by dragging
      </label>
      <input
        id={id}
        className="range"
        type="range"
        min={props.minSi}
        max={props.maxSi}
        step={props.stepSi}
        value={props.valueSi}
        onChange={(event) => props.onChange(Number(event.target.value))}
      />
    </div>
  );
}

import { type ReactNode, useId, useState } from 'react';
import { unitWord, written } from '#contract/words/written.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import type { Unit } from '#core/units/units.ts';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';
import { wrongQuantity } from './wrongQuantity.ts';

/**
 * A quantity as people type it: a bare number is in the unit shown, any other unit may be typed with it ("225 lb",
 * "14 in", "5'10\""). Gives SI, or null for an empty field; a wrong text gives null and one sentence beside the field.
 */
export function NumberField(props: {
  label: string;
  valueSi: number | null;
  unit: Unit;
  onChange: (valueSi: number | null) => void;
  minSi?: number | undefined;
  maxSi?: number | undefined;
  /** An empty field is wrong. */
  required?: boolean | undefined;
  hint?: ReactNode;
  error?: string | null | undefined;
}) {
  const { valueSi, unit, onChange } = props;
  const id = useId();
  const [typed, setTyped] = useState<{ text: string; unit: Unit } | null>(null);
  // What was typed in another unit is shown in the new one as soon as the view changes over.
  const typing = typed?.unit === unit ? typed.text : null;
  const [left, setLeft] = useState(false);
  const text = typing ?? (valueSi === null ? '' : written(valueSi, unit));
  const wrong = wrongQuantity(text, props);
  const error = (left ? wrong : null) ?? props.error;
  const input = useWrong(wrong ?? props.error ?? null);

  const type = (next: string) => {
    setTyped({ text: next, unit });
    setLeft(false);
    onChange(wrongQuantity(next, props) === null ? siOf(next, unit) : null);
  };
  return (
    <Field id={id} label={props.label} hint={props.hint} error={error}>
      <div className="number-input">
        <input
          ref={input}
          id={id}
          className="input"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-invalid={error ? true : undefined}
          aria-describedby={error ? `${id}-error` : undefined}
          onChange={(event) => type(event.target.value)}
          onInvalid={() => setLeft(true)}
          onFocus={(event) => event.target.select()}
          onBlur={(event) => {
            // On the way to Save nothing may move under the finger; saving asks every field anyway.
            const saving =
              event.relatedTarget instanceof HTMLButtonElement && event.relatedTarget.type === 'submit';
            setLeft(typing !== null && !saving);
            if (wrong === null) setTyped(null);
          }}
        />
        <span className="unit" aria-hidden="true">
          {unitWord(unit)}
        </span>
      </div>
    </Field>
  );
}

function siOf(text: string, unit: Unit): number | null {
  const parsed = parseQuantity(text, unit);
  return parsed.ok ? parsed.valueSi : null;
}

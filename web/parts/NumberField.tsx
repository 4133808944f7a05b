import { type ReactNode, useId, useState } from 'react';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import type { Unit } from '#core/units/units.ts';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';

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
  const [typing, setTyping] = useState<string | null>(null);
  const [left, setLeft] = useState(false);
  const text = typing ?? (valueSi === null ? '' : written(valueSi, unit));
  const wrong = wrongWith(text, props);
  const error = (left ? wrong : null) ?? props.error;
  const input = useWrong(wrong);

  const type = (next: string) => {
    setTyping(next);
    setLeft(false);
    onChange(wrongWith(next, props) === null ? siOf(next, unit) : null);
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
          onBlur={() => {
            setLeft(typing !== null);
            if (wrong === null) setTyping(null);
          }}
        />
        <span className="unit" aria-hidden="true">
          {unitWord(unit)}
        </span>
      </div>
    </Field>
  );
}

/** The unit as written on screen: a scale that reads force shows kg or lb. */
export function unitWord(unit: Unit): string {
  return unit === 'kgf' ? 'kg' : unit === 'lbf' ? 'lb' : unit;
}

/** The number alone, without its unit; with fixed decimals where numbers stand in a column. */
export function written(valueSi: number, unit: Unit, decimals?: number): string {
  return formatQuantity(valueSi, unit, decimals).split(' ')[0] ?? '';
}

function siOf(text: string, unit: Unit): number | null {
  const parsed = parseQuantity(text, unit);
  return parsed.ok ? parsed.valueSi : null;
}

interface Allowed {
  label: string;
  unit: Unit;
  minSi?: number | undefined;
  maxSi?: number | undefined;
  required?: boolean | undefined;
}

function wrongWith(text: string, allowed: Allowed): string | null {
  const { label, unit, minSi, maxSi } = allowed;
  if (text.trim() === '') return allowed.required ? `${label} is needed.` : null;
  const parsed = parseQuantity(text, unit);
  if (!parsed.ok) return parsed.message;
  const low = minSi !== undefined && parsed.valueSi < minSi - 1e-9;
  const high = maxSi !== undefined && parsed.valueSi > maxSi + 1e-9;
  if (!low && !high) return null;
  const say = (si: number) => `${written(si, unit)} ${unitWord(unit)}`;
  const range =
    minSi !== undefined && maxSi !== undefined
      ? `${say(minSi)} to ${say(maxSi)}`
      : minSi !== undefined
        ? `${say(minSi)} or more`
        : `${say(maxSi ?? 0)} or less`;
  return `${label} is ${say(parsed.valueSi)}; allowed is ${range}.`;
}

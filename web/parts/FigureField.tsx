import { useId, useState } from 'react';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';

/**
 * A plain figure with a word behind it: 8 sets, 60 s, 75 %, 0.55 m/s. `per` is how many of the word one of the kept value
 * is (100 for a share shown in %). A wrong text changes nothing and is told in one sentence beside the field.
 */
export function FigureField(props: {
  label: string;
  value: number;
  word?: string | undefined;
  per?: number | undefined;
  min: number;
  max: number;
  whole?: boolean | undefined;
  onChange: (value: number) => void;
  hint?: string | undefined;
  /** What is wrong with a value that the field itself takes, beside others. */
  error?: string | null | undefined;
  /** Where the field must be found again. */
  id?: string | undefined;
}) {
  const { value, min, max, whole = false, onChange } = props;
  const per = props.per ?? 1;
  const ownId = useId();
  const id = props.id ?? ownId;
  const [typing, setTyping] = useState<string | null>(null);
  const shown = (kept: number) => String(Number((kept * per).toFixed(whole ? 0 : 3)));
  const wrong = typing === null ? null : wrongWith(typing);
  const error = wrong ?? props.error;
  const input = useWrong(error ?? null);

  function wrongWith(text: string): string | null {
    const figure = read(text);
    const allowed = `${shown(min)} to ${shown(max)}${props.word ? ` ${props.word}` : ''}`;
    if (text.trim() === '' || !Number.isFinite(figure)) return `${props.label} is a number, ${allowed}.`;
    if (whole && !Number.isInteger(figure))
      return `${props.label} is ${figure}; it is a whole number, ${allowed}.`;
    const inside = figure >= min * per - 1e-9 && figure <= max * per + 1e-9;
    return inside ? null : `${props.label} is ${figure}; allowed is ${allowed}.`;
  }

  return (
    <Field id={id} label={props.label} hint={props.hint} error={error}>
      <div className="number-input">
        <input
          ref={input}
          id={id}
          className="input"
          inputMode={whole ? 'numeric' : 'decimal'}
          autoComplete="off"
          value={typing ?? shown(value)}
          aria-invalid={error ? true : undefined}
          aria-describedby={error ? `${id}-error` : undefined}
          onFocus={(event) => event.target.select()}
          onChange={(event) => {
            setTyping(event.target.value);
            if (wrongWith(event.target.value) === null) onChange(read(event.target.value) / per);
          }}
          onBlur={() => wrong === null && setTyping(null)}
        />
        {props.word && (
          <span className="unit" aria-hidden="true">
            {props.word}
          </span>
        )}
      </div>
    </Field>
  );
}

function read(text: string): number {
  return Number(text.trim().replace(',', '.'));
}

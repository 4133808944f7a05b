import { useId, useState } from 'react';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';
import { wrongText } from './wrongText.ts';

/** A line of text, a date or a time of the day. */
export function TextField(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  type?: 'text' | 'date' | 'time';
  required?: boolean | undefined;
  maxLength?: number | undefined;
  /** Given where the date tells what was done or measured: it was not done tomorrow, nor in the year 26. */
  today?: string | undefined;
  hint?: string | undefined;
  error?: string | null | undefined;
  /** Where the field must be found again. */
  id?: string | undefined;
}) {
  const ownId = useId();
  const id = props.id ?? ownId;
  const [left, setLeft] = useState(false);
  const wrong = wrongText(props);
  const error = (left ? wrong : null) ?? props.error;
  const input = useWrong(wrong ?? props.error ?? null);
  return (
    <Field id={id} label={props.label} hint={props.hint} error={error}>
      <input
        ref={input}
        id={id}
        className="input"
        type={props.type ?? 'text'}
        autoComplete="off"
        value={props.value}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-error` : undefined}
        onInvalid={() => setLeft(true)}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}

import { useId } from 'react';
import { Field } from './Field.tsx';

/** A line of text or a date. */
export function TextField(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  type?: 'text' | 'date';
  hint?: string;
  error?: string | null | undefined;
}) {
  const id = useId();
  return (
    <Field id={id} label={props.label} hint={props.hint} error={props.error}>
      <input
        id={id}
        className="input"
        type={props.type ?? 'text'}
        value={props.value}
        aria-invalid={props.error ? true : undefined}
        aria-describedby={props.error ? `${id}-error` : undefined}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}

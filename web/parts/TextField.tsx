import { Field } from './Field.tsx';
import { useText } from './useText.ts';

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
  const { id, error, element } = useText<HTMLInputElement>(props);
  return (
    <Field id={id} label={props.label} hint={props.hint} error={error}>
      <input
        {...element}
        type={props.type ?? 'text'}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}

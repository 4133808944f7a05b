import { useId } from 'react';
import { Field } from './Field.tsx';

/** One of a list of words. */
export function SelectField<T extends string>(props: {
  label: string;
  value: T;
  options: readonly { value: T; word: string }[];
  onChange: (value: T) => void;
  hint?: string | undefined;
  error?: string | null | undefined;
}) {
  const id = useId();
  const pick = (value: string) => {
    const option = props.options.find((candidate) => candidate.value === value);
    if (option) props.onChange(option.value);
  };
  return (
    <Field id={id} label={props.label} hint={props.hint} error={props.error}>
      <select id={id} className="input" value={props.value} onChange={(event) => pick(event.target.value)}>
        {props.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.word}
          </option>
        ))}
      </select>
    </Field>
  );
}

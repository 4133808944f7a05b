import { type ReactNode, useId, useState } from 'react';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';

/** One of a list of words; null: not chosen yet, which keeps a form from being saved. */
export function SelectField<T extends string>(props: {
  label: string;
  value: T | null;
  options: readonly { value: T; word: string }[];
  onChange: (value: T) => void;
  hint?: ReactNode;
  error?: string | null | undefined;
  /** Where the field must be found again. */
  id?: string | undefined;
}) {
  const ownId = useId();
  const id = props.id ?? ownId;
  const [left, setLeft] = useState(false);
  const missing = props.value === null ? `${props.label}: choose one.` : null;
  const error = (left ? missing : null) ?? props.error;
  const select = useWrong<HTMLSelectElement>(missing ?? props.error ?? null);
  const pick = (value: string) => {
    const option = props.options.find((candidate) => candidate.value === value);
    if (option) props.onChange(option.value);
  };
  return (
    <Field id={id} label={props.label} hint={props.hint} error={error}>
      <select
        ref={select}
        id={id}
        className="input"
        value={props.value ?? ''}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-error` : undefined}
        onInvalid={() => setLeft(true)}
        onChange={(event) => pick(event.target.value)}
      >
        {props.value === null && <option value="">choose</option>}
        {props.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.word}
          </option>
        ))}
      </select>
    </Field>
  );
}

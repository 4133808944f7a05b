import { useId, useState } from 'react';
import { wrongDateSentence } from '#contract/records/wrongDateSentence.ts';
import { dateText } from '#contract/words/dateText.ts';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';

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
}) {
  const id = useId();
  const [left, setLeft] = useState(false);
  const wrong = wrongWith(props);
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

function wrongWith(props: {
  label: string;
  value: string;
  required?: boolean | undefined;
  maxLength?: number | undefined;
  today?: string | undefined;
}): string | null {
  const { label, value, required, maxLength, today } = props;
  if (required && value.trim() === '') return `${label} is needed.`;
  if (maxLength !== undefined && value.length > maxLength) {
    return `${label} has ${value.length} letters; at most ${maxLength} are kept.`;
  }
  return today === undefined || value === '' ? null : wrongDateSentence(label, value, today, dateText);
}

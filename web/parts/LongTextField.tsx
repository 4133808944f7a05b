import { useId, useState } from 'react';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';
import { wrongText } from './wrongText.ts';

/** A few sentences, all in sight at once; one paragraph, so that Enter is a space. */
export function LongTextField(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  required?: boolean | undefined;
  maxLength?: number | undefined;
  error?: string | null | undefined;
  /** Where the field must be found again. */
  id?: string | undefined;
}) {
  const ownId = useId();
  const id = props.id ?? ownId;
  const [left, setLeft] = useState(false);
  const wrong = wrongText(props);
  const error = (left ? wrong : null) ?? props.error;
  const text = useWrong<HTMLTextAreaElement>(wrong ?? props.error ?? null);
  return (
    <Field id={id} label={props.label} error={error}>
      <textarea
        ref={text}
        id={id}
        className="input"
        rows={1}
        autoComplete="off"
        value={props.value}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-error` : undefined}
        onInvalid={() => setLeft(true)}
        onChange={(event) => props.onChange(event.target.value.replaceAll('\n', ' '))}
      />
    </Field>
  );
}

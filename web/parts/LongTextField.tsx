import { Field } from './Field.tsx';
import { useText } from './useText.ts';

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
  const { id, error, element } = useText<HTMLTextAreaElement>(props);
  return (
    <Field id={id} label={props.label} error={error}>
      <textarea
        {...element}
        rows={1}
        onChange={(event) => props.onChange(event.target.value.replaceAll('\n', ' '))}
      />
    </Field>
  );
}

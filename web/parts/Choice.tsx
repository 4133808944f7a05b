import { useId } from 'react';

/** A few words side by side, one of them chosen: kg or lb, day or night. The chosen one is underlined heavily. */
export function Choice<T extends string>(props: {
  label: string;
  options: readonly { value: T; word: string }[];
  value: T;
  onChange: (value: T) => void;
  /** Writes the label before the words; otherwise only read aloud. */
  showLabel?: boolean;
}) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend className={props.showLabel ? 'field-label' : 'only-read'}>{props.label}</legend>
      {props.options.map((option) => (
        <label key={option.value} className={option.value === props.value ? 'chosen' : ''}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === props.value}
            onChange={() => props.onChange(option.value)}
          />
          <span>{option.word}</span>
        </label>
      ))}
    </fieldset>
  );
}

import { useState } from 'react';
import { isSame, labelsIn } from './labelsIn.ts';
import { TextField } from './TextField.tsx';

/** The club's own words for somebody, typed with commas between them or tapped among those that the club uses already. */
export function LabelsField(props: {
  label: string;
  error: string | null;
  labels: readonly string[];
  /** Labels that others have. */
  used: readonly string[];
  onChange: (labels: string[]) => void;
}) {
  const { labels, used, onChange } = props;
  // Kept as it is typed: a comma at the end is on the way to the next label.
  const [text, setText] = useState(labels.join(', '));
  const type = (next: string) => {
    setText(next);
    onChange(labelsIn(next));
  };
  const has = (label: string) => labels.some((own) => isSame(own, label));
  const turn = (label: string) =>
    type((has(label) ? labels.filter((own) => !isSame(own, label)) : [...labels, label]).join(', '));
  return (
    <div className="labels-field">
      <TextField
        label={props.label}
        value={text}
        onChange={type}
        error={props.error}
        hint="A crew, a year, a meet: your own words, commas between them. Lists can be narrowed by them."
      />
      {used.length > 0 && (
        <fieldset className="row labels-used">
          <legend className="only-read">Labels that the club uses</legend>
          {used.map((label) => (
            <button key={label} type="button" aria-pressed={has(label)} onClick={() => turn(label)}>
              {label}
            </button>
          ))}
        </fieldset>
      )}
    </div>
  );
}

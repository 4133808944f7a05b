import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { useMethodFields } from './methodFields.ts';

/** What a week should not go beyond, or that nobody looks at it. */
export function LimitField(props: {
  /** Path of the limit. */
  at: string;
  /** What is looked at. */
  word: string;
  label: string;
  /** Null: not looked at. */
  value: number | null;
  /** What it begins at once it is looked at. */
  usual: number;
  limits: { min: number; max: number; whole: boolean };
  percent?: boolean;
  hint?: string;
  onChange: (value: number | null) => void;
}) {
  const { at, word, label, value, usual, limits, percent = false, hint, onChange } = props;
  const field = useMethodFields('')(at, label);
  const { whole, ...range } = limits;
  return (
    <div className="stack tight">
      <CheckField
        label={`Look at ${word}`}
        checked={value !== null}
        onChange={(isLookedAt) => onChange(isLookedAt ? usual : null)}
      />
      {value !== null &&
        (percent ? (
          <PercentField {...field} {...range} value={value} hint={hint} onChange={onChange} />
        ) : (
          <FigureField {...field} {...range} whole={whole} value={value} hint={hint} onChange={onChange} />
        ))}
    </div>
  );
}

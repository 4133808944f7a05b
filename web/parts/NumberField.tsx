import { type ReactNode, useId, useState } from 'react';
import type { Question } from '#contract/words/meantInstead.ts';
import { unitWord, written } from '#contract/words/written.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import type { Unit } from '#core/units/units.ts';
import { Asked } from './Asked.tsx';
import { Field } from './Field.tsx';
import { useWrong } from './useWrong.ts';
import { allowedInstead, wrongQuantity } from './wrongQuantity.ts';

/**
 * A quantity as people type it: a bare number is in the unit shown, any other unit may be typed with it ("225 lb",
 * "14 in", "5'10\""). Gives SI, or null for an empty field; a wrong text gives null and one sentence beside the field.
 * What `ask` says of a value typed here stands beside the field too, once it was left; saved with it unseen, the form asks first.
 */
export function NumberField(props: {
  label: string;
  valueSi: number | null;
  unit: Unit;
  onChange: (valueSi: number | null) => void;
  minSi?: number | undefined;
  maxSi?: number | undefined;
  /** An empty field is wrong. */
  required?: boolean | undefined;
  hint?: ReactNode;
  error?: string | null | undefined;
  /** What is odd about a value that the field takes; null: nothing. */
  ask?: ((valueSi: number) => Question | null) | undefined;
}) {
  const { valueSi, unit, onChange } = props;
  const id = useId();
  const [typed, setTyped] = useState<{ text: string; unit: Unit } | null>(null);
  // What was typed in another unit is shown in the new one as soon as the view changes over.
  const typing = typed?.unit === unit ? typed.text : null;
  const [left, setLeft] = useState(false);
  const [touched, setTouched] = useState(false);
  const [askedOf, setAskedOf] = useState<string | null>(null);
  const text = typing ?? (valueSi === null ? '' : written(valueSi, unit));
  const wrong = wrongQuantity(text, props);
  const error = (left ? wrong : null) ?? props.error;
  const question = touched && wrong === null && valueSi !== null ? (props.ask?.(valueSi) ?? null) : null;
  const isAsked = question !== null && question.sentence === askedOf;
  const input = useWrong(wrong ?? props.error ?? (isAsked ? null : (question?.sentence ?? null)));
  const asked = isAsked ? question : null;
  const offers = asked?.offers ?? (error ? allowedInstead(text, props) : []);

  const type = (next: string) => {
    setTyped({ text: next, unit });
    setLeft(false);
    setTouched(true);
    onChange(wrongQuantity(next, props) === null ? siOf(next, unit) : null);
  };
  const asks = ((asked !== null && !error) || offers.length > 0) && (
    <Asked
      id={`${id}-asked`}
      // What is wrong says enough; what may have been meant helps all the same.
      sentence={error ? null : (asked?.sentence ?? null)}
      offers={offers}
      onTake={(meantSi) => {
        setTyped(null);
        setLeft(false);
        onChange(meantSi);
        input.current?.focus();
      }}
    />
  );
  return (
    <Field id={id} label={props.label} hint={props.hint} error={error} asks={asks}>
      <div className="number-input">
        <input
          ref={input}
          id={id}
          className="input"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-invalid={error ? true : undefined}
          aria-describedby={error ? `${id}-error` : asked ? `${id}-asked` : undefined}
          onChange={(event) => type(event.target.value)}
          onInvalid={() => {
            setLeft(true);
            setAskedOf(question?.sentence ?? null);
          }}
          onFocus={(event) => event.target.select()}
          onBlur={(event) => {
            // On the way to Save nothing may move under the finger; saving asks every field anyway.
            const saving =
              event.relatedTarget instanceof HTMLButtonElement && event.relatedTarget.type === 'submit';
            setLeft(typing !== null && !saving);
            if (!saving) setAskedOf(question?.sentence ?? null);
            if (wrong === null) setTyped(null);
          }}
        />
        <span className="unit" aria-hidden="true">
          {unitWord(unit)}
        </span>
      </div>
    </Field>
  );
}

function siOf(text: string, unit: Unit): number | null {
  const parsed = parseQuantity(text, unit);
  return parsed.ok ? parsed.valueSi : null;
}

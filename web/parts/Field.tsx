import type { ReactNode } from 'react';

/** A labelled place in a form: label above, hint and one clear sentence of what is wrong beside it. */
export function Field(props: {
  id: string;
  label: string;
  hint?: ReactNode;
  error?: string | null | undefined;
  /** What is asked of the value, below what is wrong with it. */
  asks?: ReactNode;
  children: ReactNode;
}) {
  return (
    <div className={props.error ? 'field wrong' : 'field'}>
      <label className="field-label" htmlFor={props.id}>
        {props.label}
      </label>
      {props.children}
      {props.error ? (
        <p className="field-error" id={`${props.id}-error`} role="alert">
          {props.error}
        </p>
      ) : (
        props.hint && <p className="field-hint">{props.hint}</p>
      )}
      {props.asks}
    </div>
  );
}

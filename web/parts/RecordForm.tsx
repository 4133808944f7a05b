import { type FormEvent, type ReactNode, useEffect, useRef, useState } from 'react';

/**
 * A form for one record: nothing is saved while a field is wrong, each wrong field says so beside itself, and what the
 * server refuses is said in its own sentence. Esc leaves.
 */
export function RecordForm(props: {
  title: string;
  /** `more`: saved by the button that goes on to the next one. */
  onSave: (more: boolean) => Promise<unknown>;
  onLeave: () => void;
  onRemove?: (() => void) | undefined;
  /** What is wrong and no field says; blocks saving. Of a kind of record `useRecordFields` tells it. */
  wrong: string | null;
  saveWord?: string;
  /** Where many alike are added one after another: the word of a second button that saves and stays. */
  moreWord?: string | undefined;
  leaveWord?: string;
  children: ReactNode;
}) {
  const form = useRef<HTMLFormElement>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [tried, setTried] = useState(false);
  const [busy, setBusy] = useState(false);
  const save = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    setTried(true);
    // Every wrong field hears this and shows its sentence.
    if (!event.currentTarget.checkValidity()) {
      event.currentTarget.querySelector<HTMLElement>(':invalid:not(fieldset)')?.focus();
      return;
    }
    if (props.wrong) return;
    setBusy(true);
    setRefused(null);
    props
      .onSave(submitter instanceof HTMLButtonElement && submitter.value === 'more')
      .catch((error: Error) => setRefused(error.message))
      .finally(() => setBusy(false));
  };
  const { onLeave } = props;
  useEffect(() => {
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && onLeave();
    const element = form.current;
    element?.addEventListener('keydown', leave);
    return () => element?.removeEventListener('keydown', leave);
  }, [onLeave]);
  const said = refused ?? (tried ? props.wrong : null);
  return (
    <form ref={form} className="record-form stack" noValidate onSubmit={save} aria-label={props.title}>
      <h2>{props.title}</h2>
      <div className="fields">{props.children}</div>
      {said && (
        <p className="field-error" role="alert">
          {said}
        </p>
      )}
      <div className="row">
        <button type="submit" className="strong" disabled={busy}>
          {props.saveWord ?? 'Save'}
        </button>
        {props.moreWord && (
          <button type="submit" value="more" disabled={busy}>
            {props.moreWord}
          </button>
        )}
        <button type="button" onClick={props.onLeave}>
          {props.leaveWord ?? 'Leave unchanged'}
        </button>
        {props.onRemove && (
          <button type="button" className="plain" onClick={props.onRemove}>
            Remove
          </button>
        )}
      </div>
    </form>
  );
}

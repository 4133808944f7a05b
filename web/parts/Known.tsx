import { type ReactNode, useId, useState } from 'react';
import type { KnownHow } from '#contract/records/knownHow.ts';

/**
 * A number with its unit and how it is known. Measured: plain. Estimated: with its interval and `est.`.
 * Assumed or not measured: dashed underline; a tap says what was assumed and how to measure it.
 */
export function Known(props: {
  /** The number as written, without its unit: "102.5". */
  value: string;
  unit: string;
  known: KnownHow;
  /** The 95 % interval as written: "98 to 107". */
  interval?: string | undefined;
  /** One or two sentences: what was assumed, how to measure it. */
  why?: ReactNode;
  size?: 'row' | 'lead' | 'wall';
}) {
  const [open, setOpen] = useState(false);
  // A number that changes is marked for a moment; one that has just appeared is not.
  const [firstValue] = useState(props.value);
  const changed = props.value === firstValue ? '' : ' changed';
  const id = useId();
  const size = props.size === undefined || props.size === 'row' ? '' : ` ${props.size}`;
  const dashed = props.known === 'assumed' || props.known === 'notMeasured';
  const number = (
    <span key={props.value} className={`numeral${size}${dashed ? ' dashed' : ''}${changed}`}>
      {props.value}
      <span className="unit">{props.unit}</span>
    </span>
  );
  const mark = markOf[props.known];
  return (
    <span className="known">
      {props.why ? (
        <button
          type="button"
          className="known-why"
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
        >
          {number}
          {mark && <span className="known-mark">{mark}</span>}
        </button>
      ) : (
        <>
          {number}
          {mark && <span className="known-mark">{mark}</span>}
        </>
      )}
      {props.interval && props.known !== 'measured' && (
        <span className="known-interval">{props.interval}</span>
      )}
      {open && (
        <span className="known-said" id={id} role="note">
          {props.why}
        </span>
      )}
    </span>
  );
}

const markOf: Record<KnownHow, string | null> = {
  measured: null,
  estimated: 'est.',
  assumed: 'assumed',
  notMeasured: 'not measured',
};

import type { RefObject } from 'react';
import { moved } from './titledList.ts';

/** Where one of a list stands among the others: earlier, later, once more, or not at all. What cannot be pressed keeps the focus all the same. */
export function OrderButtons<Each>(props: {
  /** "this phase", "Speed squat": what is moved, for who hears the buttons. */
  of: string;
  list: readonly Each[];
  at: number;
  /** `shown`: the place of the one to be looked at from then on. */
  onChange: (list: Each[], shown: number) => void;
  /** The list with a copy behind this one; null: there is no room for another. */
  withCopy: (() => Each[]) | null;
  /** There may be none at all. */
  mayBeNone?: boolean;
  /** Where the focus goes once this one, with its buttons, is left out. */
  after?: RefObject<HTMLElement | null>;
}) {
  const { of, list, at, onChange, withCopy, mayBeNone = false, after } = props;
  const isFirst = at === 0;
  const isLast = at === list.length - 1;
  const mustStay = !mayBeNone && list.length === 1;
  return (
    <div className="row">
      <button
        type="button"
        aria-disabled={isFirst}
        aria-label={`Earlier: ${of}`}
        onClick={() => isFirst || onChange(moved(list, at, -1), at - 1)}
      >
        Earlier
      </button>
      <button
        type="button"
        aria-disabled={isLast}
        aria-label={`Later: ${of}`}
        onClick={() => isLast || onChange(moved(list, at, 1), at + 1)}
      >
        Later
      </button>
      {withCopy && (
        <button type="button" aria-label={`Copy ${of}`} onClick={() => onChange(withCopy(), at + 1)}>
          Copy
        </button>
      )}
      <button
        type="button"
        className="plain"
        aria-disabled={mustStay}
        aria-label={`Leave out ${of}`}
        onClick={() => {
          if (mustStay) return;
          after?.current?.focus();
          onChange(list.toSpliced(at, 1), Math.max(0, Math.min(at, list.length - 2)));
        }}
      >
        Leave out
      </button>
    </div>
  );
}

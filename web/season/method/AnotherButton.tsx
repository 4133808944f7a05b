import type { ReactNode, RefObject } from 'react';

/** One more of a list. It stays where the list is full, so that whoever leaves one out by the keyboard goes on from here. */
export function AnotherButton(props: {
  ref: RefObject<HTMLButtonElement | null>;
  hasRoom: boolean;
  isPlain?: boolean;
  onAdd: () => void;
  children: ReactNode;
}) {
  const { ref, hasRoom, isPlain = false, onAdd, children } = props;
  return (
    <div>
      <button
        type="button"
        ref={ref}
        className={isPlain ? 'plain' : undefined}
        aria-disabled={!hasRoom}
        onClick={() => hasRoom && onAdd()}
      >
        {children}
      </button>
    </div>
  );
}

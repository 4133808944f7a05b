import { createContext, type ReactNode, use, useCallback, useEffect, useRef, useState } from 'react';
import { useStripBelow } from './useStripBelow.ts';

interface Said {
  key: number;
  sentence: string;
  undo: (() => void) | undefined;
}

type Say = (sentence: string, undo?: () => void) => void;

const ToastContext = createContext<Say>(() => {});

/** How long a sentence stays; one with an undo stays longer. Hovering or focus holds it. */
const shownMs = { plain: 5000, undo: 12_000 };

/** Says in one line what has just happened, with Undo where it can be taken back, in a strip of its own below the page. */
export function Toast({ children }: { children: ReactNode }) {
  const [said, setSaid] = useState<Said | null>(null);
  const [held, setHeld] = useState(false);
  const nextKey = useRef(0);
  const strip = useStripBelow(said !== null);
  const say = useCallback<Say>((sentence, undo) => {
    nextKey.current += 1;
    setSaid({ key: nextKey.current, sentence, undo });
  }, []);

  useEffect(() => {
    if (said === null || held) return;
    const timer = setTimeout(() => setSaid(null), said.undo ? shownMs.undo : shownMs.plain);
    return () => clearTimeout(timer);
  }, [said, held]);

  return (
    <ToastContext value={say}>
      {children}
      <output ref={strip} className={said ? 'toast-place held' : 'toast-place'}>
        {said && (
          <div
            className="toast"
            key={said.key}
            onMouseEnter={() => setHeld(true)}
            onMouseLeave={() => setHeld(false)}
            onFocus={() => setHeld(true)}
            onBlur={() => setHeld(false)}
          >
            <span>{said.sentence}</span>
            {said.undo && (
              <button
                type="button"
                onClick={() => {
                  said.undo?.();
                  setHeld(false);
                  setSaid(null);
                }}
              >
                Undo
              </button>
            )}
          </div>
        )}
      </output>
    </ToastContext>
  );
}

/** `say(sentence, undo?)` from anywhere on a screen. */
export function useToast(): Say {
  return use(ToastContext);
}

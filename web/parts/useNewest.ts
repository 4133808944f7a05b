import { type RefObject, useEffect, useRef } from 'react';

/** What the screen was drawn with last, for what is called later than it was made: an undo, a page that is left. */
export function useNewest<Value>(value: Value): RefObject<Value> {
  const newest = useRef(value);
  useEffect(() => {
    newest.current = value;
  });
  return newest;
}

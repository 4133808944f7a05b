import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Sets an element closer, level by level, until all of it stands in its room: `data-set` is 0 for as designed, then 1, 2 ...
 * Paper is measured in millimetres, so what fits on the screen fits in print.
 */
export function useFitting<E extends HTMLElement>(closest: number): RefObject<E | null> {
  const ref = useRef<E>(null);
  useLayoutEffect(() => {
    const fit = () => ref.current && setUntilItFits(ref.current, closest);
    fit();
    // Letters that arrive later are of another width.
    void document.fonts.ready.then(fit);
  });
  return ref;
}

function setUntilItFits(element: HTMLElement, closest: number): void {
  for (let level = 0; level <= closest; level++) {
    element.dataset.set = String(level);
    if (element.scrollHeight <= element.clientHeight) return;
  }
}

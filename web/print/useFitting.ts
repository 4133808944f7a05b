import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Sets a page closer, level by level, until all of it stands in its room: `data-set` is 0 for the roomiest, `closest` for the
 * least that is allowed. What does not fit then is told to `onTooFull`; where nobody takes it, the page is let grow (`long`), so
 * that no word is lost. Paper is measured in millimetres: what fits on the screen fits in print.
 */
export function useFitting<E extends HTMLElement>(
  closest: number,
  onTooFull: (() => void) | undefined,
): RefObject<E | null> {
  const ref = useRef<E>(null);
  useLayoutEffect(() => {
    const page = ref.current;
    if (page === null) return;
    // The mark across a page that does not stand reaches beyond it, and is no reason for another page.
    page.dataset.measured = '';
    const fits = setUntilItFits(page, closest);
    delete page.dataset.measured;
    if (fits) return;
    if (onTooFull) onTooFull();
    else page.dataset.set = 'long';
  });
  return ref;
}

/** No column is narrower, as a share of the page. */
const leastColumn = 0.25;

function setUntilItFits(element: HTMLElement, closest: number): boolean {
  for (let level = 0; level <= closest; level++) {
    element.dataset.set = String(level);
    // Rows that find no room stand below the page, columns beside it; less than a column is the space behind a word.
    const { scrollHeight, clientHeight, scrollWidth, clientWidth } = element;
    if (scrollHeight <= clientHeight && scrollWidth < (1 + leastColumn) * clientWidth) return true;
  }
  return false;
}

import { type RefObject, useLayoutEffect, useRef } from 'react';

/** Tells of a card how many of its blocks stand whole in its quarter, when not all of them do. */
export function useQuarter<E extends HTMLElement>(
  onTooFull: ((blocksThatFit: number) => void) | undefined,
): RefObject<E | null> {
  const ref = useRef<E>(null);
  useLayoutEffect(() => {
    const card = ref.current;
    if (card === null || card.scrollHeight <= card.clientHeight) return;
    const blocks = [...card.children].filter((child) => child.matches('.card-block'));
    const endPx =
      card.getBoundingClientRect().bottom - Number.parseFloat(getComputedStyle(card).paddingBottom);
    const fit = blocks.findIndex((block) => block.getBoundingClientRect().bottom > endPx);
    // A quarter holds a block in any case: a card that holds none would never end.
    if (fit !== -1 && blocks.length > 1) onTooFull?.(Math.max(1, fit));
  });
  return ref;
}

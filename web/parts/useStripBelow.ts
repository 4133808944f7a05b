import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Gives a strip at the foot of the window a place of its own while it holds something: the page ends above it, at the same place
 * that it was scrolled to, so that nothing one may want to tap lies underneath.
 */
export function useStripBelow(isHeld: boolean): RefObject<HTMLOutputElement | null> {
  const strip = useRef<HTMLOutputElement>(null);
  useLayoutEffect(() => {
    if (!isHeld || strip.current === null) return;
    const { documentElement: page, body } = document;
    const scrolledPx = window.scrollY;
    const fit = () =>
      page.style.setProperty('--strip', `${strip.current?.getBoundingClientRect().height ?? 0}px`);
    const grown = new ResizeObserver(fit);
    grown.observe(strip.current);
    fit();
    page.classList.add('has-strip');
    body.scrollTop = scrolledPx;
    // What one was at may have stood where the strip is now.
    const { activeElement } = document;
    if (activeElement !== body) activeElement?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    return () => {
      grown.disconnect();
      const nowPx = body.scrollTop;
      page.classList.remove('has-strip');
      window.scrollTo(0, nowPx);
    };
  }, [isHeld]);
  return strip;
}

import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';

/** Nothing can be read in a narrower drawing; a page is laid out so narrow for a moment at most. */
const LEAST_PX = 160;

/** Draws its content for the width it really has, so that letters in drawings keep their size. */
export function MeasuredWidth({ children }: { children: (widthPx: number) => ReactNode }) {
  const place = useRef<HTMLDivElement>(null);
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    setWidthPx(element.clientWidth);
    const observer = new ResizeObserver(() => setWidthPx(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={place} className="measured">
      {widthPx > 0 && children(Math.max(LEAST_PX, widthPx))}
    </div>
  );
}

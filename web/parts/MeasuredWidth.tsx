import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';

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
      {widthPx > 0 && children(widthPx)}
    </div>
  );
}

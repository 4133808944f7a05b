import type { ReactNode } from 'react';
import { letters } from './paint.ts';

/** Paper for a picture with small letters; `label` says in words what it shows. `fill`: colour of what has none of its own. */
export function Plot(props: {
  label: string;
  widthPx: number;
  heightPx: number;
  fill?: string;
  children: ReactNode;
}) {
  const { label, widthPx, heightPx, fill, children } = props;
  return (
    <svg
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      role="img"
      aria-label={label}
      fontFamily={letters.family}
      fontSize={letters.small}
      fill={fill}
    >
      {children}
    </svg>
  );
}

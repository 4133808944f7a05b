import { paint } from './paint.ts';
import { phaseFill } from './SeasonPatterns.tsx';

/** A phase's pattern beside its name; empty where there is no phase (-1). */
export function PhaseSwatch({ pattern }: { pattern: number }) {
  return (
    <svg width="28" height="14" aria-hidden="true">
      <rect
        x="0.5"
        y="0.5"
        width="27"
        height="13"
        fill={pattern < 0 ? 'none' : phaseFill(pattern)}
        stroke={paint.ironLine}
      />
    </svg>
  );
}

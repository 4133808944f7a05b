import { paint } from './paint.ts';
import type { SetMark } from './TimeScene.ts';

/**
 * A set as a mark: made points up and is open, missed points down and is filled, nearly equal is a dot. A record has a
 * bar under it; what is hardly believed has a ring.
 */
export function MarkShape(props: {
  says: SetMark['says'];
  x: number;
  y: number;
  doubted?: boolean;
  record?: boolean;
  /** It lies beyond the pane: an arrow stands on the side where it went. */
  beyond?: 'above' | 'below' | null;
  /** Smaller where many stand close. */
  scale?: number;
}) {
  const { says, x, y, doubted = false, record = false, beyond = null, scale = 1 } = props;
  return (
    <g transform={scale === 1 ? undefined : `translate(${x} ${y}) scale(${scale}) translate(${-x} ${-y})`}>
      {says === 'atLeast' && (
        <path
          d={`M${x - 3.5} ${y + 2.5}L${x} ${y - 4}L${x + 3.5} ${y + 2.5}Z`}
          fill={paint.paper}
          {...line}
        />
      )}
      {says === 'lessThan' && (
        <path d={`M${x - 4} ${y - 3}L${x} ${y + 4}L${x + 4} ${y - 3}Z`} fill={paint.ink} {...line} />
      )}
      {says === 'near' && <circle cx={x} cy={y} r="2.4" fill={paint.ink} />}
      {record && <path d={`M${x - 5} ${y + 6}h10`} stroke={paint.ink} strokeWidth="2" />}
      {doubted && <circle cx={x} cy={y} r="8" fill="none" stroke={paint.stop} strokeWidth="1.5" />}
      {doubted && beyond !== null && (
        <path
          d={beyond === 'above' ? `M${x - 4} ${y - 10}l4 -5l4 5` : `M${x - 4} ${y + 10}l4 5l4 -5`}
          fill="none"
          stroke={paint.stop}
          strokeWidth="1.5"
        />
      )}
    </g>
  );
}

const line = { stroke: paint.ink, strokeWidth: 1.1, strokeLinejoin: 'round' } as const;

import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { paint } from './paint.ts';

const heightPx = 22;

/** How far a number has been learned: the range before any set as a thin frame, the one now as a bar in it, its middle a line. */
export function BeliefBar(props: { now: Belief; before: Belief; widthPx: number }) {
  const { now, before, widthPx } = props;
  const low = Math.min(now.low95, before.low95);
  const high = Math.max(now.high95, before.high95);
  const x = (value: number) =>
    high > low ? 1 + ((widthPx - 2) * (value - low)) / (high - low) : widthPx / 2;
  return (
    <svg width={widthPx} height={heightPx} aria-hidden="true">
      <path d={`M${x(before.low95)} 11H${x(before.high95)}`} stroke={paint.ruleStrong} />
      <rect
        x={x(before.low80)}
        y="5"
        width={x(before.high80) - x(before.low80)}
        height="12"
        fill="none"
        stroke={paint.ruleStrong}
      />
      <rect
        x={x(now.low80)}
        y="8"
        width={Math.max(1, x(now.high80) - x(now.low80))}
        height="6"
        fill={paint.ink}
        fillOpacity="0.55"
      />
      <path d={`M${x(now.median)} 2v18`} stroke={paint.ink} strokeWidth="2.5" />
    </svg>
  );
}

import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { furtherStop, type Grip, nearestStop } from './Grip.ts';
import { paint } from './paint.ts';

/** As wide and high as a thumb (px). */
const thumbPx = 48;
/** What one sees of a grip (px). */
const shownPx = { long: 28, thick: 10 };
/** Stops that a page key skips. */
const pageStops = 10;

/**
 * A place to take hold of in a drawing. It follows the pointer along one direction, keeps it until it is let go, and
 * moves by arrow keys; a screen reader meets a slider.
 */
export function DragGrip(props: {
  grip: Grip;
  way: 'sideways' | 'upwards';
  /** Its middle. */
  x: number;
  y: number;
  /** How long the edge is along which one can take hold; a thumb's width at least (px). */
  alongPx: number;
  /** What one pixel to the right or up is worth. */
  perPx: number;
  onHold: (held: boolean) => void;
}) {
  const { grip, way, x, y, onHold } = props;
  const from = useRef<{ px: number; value: number; perPx: number; now: number } | null>(null);
  const sideways = way === 'sideways';
  const along = Math.max(thumbPx, props.alongPx);
  const [width, height] = sideways ? [thumbPx, along] : [along, thumbPx];
  const long = Math.min(shownPx.long, Math.max(shownPx.thick + 4, props.alongPx - 4));
  const [shownWidth, shownHeight] = sideways ? [shownPx.thick, long] : [long, shownPx.thick];
  const place = (event: PointerEvent) => (sideways ? event.clientX : -event.clientY);

  const take = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    from.current = { px: place(event), value: grip.value, perPx: props.perPx, now: grip.value };
    onHold(true);
  };
  const move = (event: PointerEvent) => {
    const start = from.current;
    if (start === null) return;
    const next = nearestStop(grip, start.value + (place(event) - start.px) * start.perPx);
    if (next === start.now) return;
    start.now = next;
    grip.onMove(next);
  };
  const letGo = () => {
    if (from.current === null) return;
    from.current = null;
    onHold(false);
  };
  const press = (event: KeyboardEvent) => {
    const next = valueAfter(event.key, grip);
    if (next === null) return;
    event.preventDefault();
    event.stopPropagation();
    grip.onMove(next);
  };
  return (
    <g
      role="slider"
      tabIndex={0}
      aria-label={grip.label}
      aria-orientation={sideways ? 'horizontal' : 'vertical'}
      aria-valuemin={grip.min}
      aria-valuemax={grip.max}
      aria-valuenow={grip.value}
      aria-valuetext={grip.valueText}
      className={`chart-grip ${way}`}
      onPointerDown={take}
      onPointerMove={move}
      onLostPointerCapture={letGo}
      onKeyDown={press}
    >
      <rect
        className="chart-grip-reach"
        x={x - width / 2}
        y={y - height / 2}
        width={width}
        height={height}
        fill="transparent"
      />
      <rect
        className="chart-grip-shown"
        x={x - shownWidth / 2}
        y={y - shownHeight / 2}
        width={shownWidth}
        height={shownHeight}
        rx="2"
        fill={paint.paper}
        stroke={paint.ink}
        strokeWidth="1.5"
      />
      <path
        d={sideways ? `M${x - 1.5} ${y - 4}v8m3 0v-8` : `M${x - 4} ${y - 1.5}h8m0 3h-8`}
        fill="none"
        stroke={paint.ink}
      />
    </g>
  );
}

function valueAfter(key: string, grip: Grip): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return furtherStop(grip, 1);
    case 'ArrowLeft':
    case 'ArrowDown':
      return furtherStop(grip, -1);
    case 'PageUp':
      return furtherStop(grip, pageStops);
    case 'PageDown':
      return furtherStop(grip, -pageStops);
    case 'Home':
      return nearestStop(grip, grip.min);
    case 'End':
      return nearestStop(grip, grip.max);
    default:
      return null;
  }
}

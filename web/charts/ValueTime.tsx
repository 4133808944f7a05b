import { scaleLinear, scaleUtc } from 'd3-scale';
import { line } from 'd3-shape';
import { Plot } from './Plot.tsx';
import { letters, paint } from './paint.ts';
import { TimeAxes } from './TimeAxes.tsx';
import { timeOf } from './TimeScene.ts';
import { datesUnder } from './timeFrame.ts';

export interface ValueOn {
  key: string;
  /** A date. */
  on: string;
  value: number;
  /** Drawn as a ring: it was tried and not made. */
  missed?: boolean;
}

/** One number over time: each a dot, the newest with its words. */
export function ValueTime(props: {
  label: string;
  points: readonly ValueOn[];
  /** Room kept beyond the lowest and highest value. */
  spare: number;
  lastText: string;
  /** Each dot follows from the one before it, and they are joined. */
  joined?: true;
  widthPx: number;
}) {
  const { widthPx, spare } = props;
  const points = props.points.toSorted((a, b) => a.on.localeCompare(b.on));
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return null;
  const values = points.map(({ value }) => value);
  const right = widthPx - room.right;
  const floor = heightPx - room.bottom;
  const [from, to] = [timeOf(first.on), timeOf(last.on)];
  // A single day still has a width, and its dot stands at the right.
  const x = scaleUtc([to > from ? from : from - weekMs, to], [room.left, right]);
  const y = scaleLinear([Math.min(...values) - spare, Math.max(...values) + spare], [floor, room.top]);
  const path = line<ValueOn>(
    ({ on }) => x(timeOf(on)),
    ({ value }) => y(value),
  );
  return (
    <Plot label={props.label} widthPx={widthPx} heightPx={heightPx}>
      <TimeAxes
        {...{ y, floor, heightPx }}
        figures={y.ticks(4)}
        left={room.left}
        right={right}
        dates={to > from ? datesUnder(x, right - room.left) : []}
        datesPx={floor}
      />
      {props.joined && <path d={path(points) ?? ''} fill="none" stroke={paint.ink} strokeWidth="1.5" />}
      {points.map(({ key, on, value, missed }) => (
        <circle
          key={key}
          cx={x(timeOf(on))}
          cy={y(value)}
          r={missed ? 3.5 : 2.5}
          fill={missed ? 'none' : paint.ink}
          stroke={missed ? paint.ink : 'none'}
        />
      ))}
      <text
        x={x(timeOf(last.on)) + 8}
        y={y(last.value) + 5}
        fontWeight="640"
        fontSize={letters.tag}
        fill={paint.ink}
      >
        {props.lastText}
      </text>
    </Plot>
  );
}

const heightPx = 136;
const room = { left: 44, right: 72, top: 12, bottom: 28 };
const weekMs = 7 * 86_400_000;

import { paint } from './paint.ts';

/** The frame of a plain plot: a rule and a figure for each height, a tick and a figure for each place along, and the floor. */
export function PlotFrame(props: {
  x: (value: number) => number;
  y: (value: number) => number;
  along: readonly number[];
  up: readonly { value: number; word: string }[];
  leftPx: number;
  rightPx: number;
  floorPx: number;
}) {
  const { x, y, leftPx, rightPx, floorPx } = props;
  return (
    <g fill={paint.quiet}>
      {props.up.map(({ value, word }) => (
        <g key={value}>
          <path d={`M${leftPx} ${y(value)}H${rightPx}`} stroke={paint.rule} />
          <text x={leftPx - 8} y={y(value) + 4} textAnchor="end">
            {word}
          </text>
        </g>
      ))}
      {props.along.map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${floorPx}v5`} stroke={paint.ruleStrong} />
          <text x={x(tick)} y={floorPx + 18} textAnchor="middle">
            {tick}
          </text>
        </g>
      ))}
      <path d={`M${leftPx} ${floorPx}H${rightPx}`} stroke={paint.ink} />
    </g>
  );
}

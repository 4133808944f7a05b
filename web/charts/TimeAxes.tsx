import type { ScaleLinear } from 'd3-scale';
import { paint } from './paint.ts';
import type { TimeFrame } from './timeFrame.ts';

/** A rule and a figure at each height, the floor, and the dates under it, whose ticks hang from `datesPx`. */
export function TimeAxes(props: {
  y: ScaleLinear<number, number>;
  figures: readonly number[];
  left: number;
  right: number;
  floor: number;
  heightPx: number;
  dates: TimeFrame['dates'];
  datesPx: number;
}) {
  const { y, left, right, floor, heightPx, datesPx } = props;
  return (
    <g>
      {props.figures.map((figure) => (
        <g key={figure}>
          <path d={`M${left} ${y(figure)}H${right}`} stroke={paint.rule} />
          <text x={left - 6} y={y(figure) + 4} textAnchor="end" fill={paint.quiet}>
            {figure}
          </text>
        </g>
      ))}
      <path d={`M${left} ${floor}H${right}`} stroke={paint.ink} />
      {props.dates.map(({ atPx, text }) => (
        <g key={atPx}>
          <path d={`M${atPx} ${datesPx}v5`} stroke={paint.ruleStrong} />
          <text x={atPx} y={heightPx - 6} textAnchor="middle" fill={paint.quiet}>
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}

import { scaleLinear } from 'd3-scale';
import type { BacktestReport } from '#contract/backtest/backtestReport.ts';
import { Plot } from '#web/charts/Plot.tsx';
import { paint } from '#web/charts/paint.ts';

const mostPx = 380;
const room = { left: 48, right: 20, top: 16, bottom: 44 };

/** Share made against the mean chance foretold, a circle for each bin by its attempts; on the dotted line both agree. */
export function ChanceAgainstMade(props: { bins: BacktestReport['attempts']['bins']; widthPx: number }) {
  const size = Math.min(mostPx, props.widthPx);
  const floor = size - room.bottom;
  const x = scaleLinear([0, 1], [room.left, size - room.right]);
  const y = scaleLinear([0, 1], [floor, room.top]);
  return (
    <Plot
      label="Share of attempts made against the chance foretold. The table beside it tells the same."
      widthPx={size}
      heightPx={size}
      fill={paint.quiet}
    >
      {[0, 0.5, 1].map((share) => (
        <g key={share}>
          <text x={room.left - 8} y={y(share) + 4} textAnchor="end">
            {100 * share} %
          </text>
          <text x={x(share)} y={floor + 18} textAnchor="middle">
            {100 * share} %
          </text>
        </g>
      ))}
      <path
        d={`M${room.left} ${room.top}V${floor}H${size - room.right}`}
        fill="none"
        stroke={paint.ruleStrong}
      />
      <path d={`M${x(0)} ${y(0)}L${x(1)} ${y(1)}`} stroke={paint.ink} strokeDasharray="2 4" />
      <text x={room.left + 8} y={room.top + 10}>
        made
      </text>
      <text x={size - room.right} y={floor + 36} textAnchor="end">
        chance foretold
      </text>
      {props.bins.map(({ from, count, expected, made }) => (
        <g key={from}>
          <circle
            cx={x(expected / count)}
            cy={y(made / count)}
            r={radiusPx(count)}
            fill={paint.paper}
            stroke={paint.ink}
            strokeWidth="2"
          />
          <text
            x={x(expected / count) - radiusPx(count) - 6}
            y={y(made / count) + 4}
            textAnchor="end"
            stroke={paint.paper}
            strokeWidth="4"
            paintOrder="stroke"
          >
            {made} of {count}
          </text>
        </g>
      ))}
    </Plot>
  );
}

function radiusPx(count: number): number {
  return 3 + Math.min(9, Math.sqrt(count));
}

import { scaleLinear } from 'd3-scale';
import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import { Plot } from '#web/charts/Plot.tsx';
import { PlotFrame } from '#web/charts/PlotFrame.tsx';
import { paint } from '#web/charts/paint.ts';

const mostPx = 380;
const room = { left: 48, right: 20, top: 28, bottom: 44 };

/** Share made against the mean chance foretold, a circle for each bin by its attempts; on the dotted line both agree. */
export function ChanceAgainstMade(props: { bins: BacktestReport['attempts']['bins']; widthPx: number }) {
  const size = Math.min(mostPx, props.widthPx);
  const floor = size - room.bottom;
  const x = scaleLinear([0, 100], [room.left, size - room.right]);
  const y = scaleLinear([0, 100], [floor, room.top]);
  return (
    <Plot
      label="Share of attempts made against the forecast chance. The table beside it shows the same."
      widthPx={size}
      heightPx={size}
      fill={paint.quiet}
    >
      <PlotFrame
        x={x}
        y={y}
        along={[0, 25, 50, 75, 100]}
        up={[0, 25, 50, 75, 100].map((value) => ({ value, word: `${value} %` }))}
        leftPx={room.left}
        rightPx={size - room.right}
        floorPx={floor}
      />
      <path d={`M${x(0)} ${y(0)}L${x(100)} ${y(100)}`} stroke={paint.ink} strokeDasharray="2 4" />
      <text x={room.left} y={room.top - 10}>
        made
      </text>
      <text x={size - room.right} y={floor + 36} textAnchor="end">
        % forecast chance
      </text>
      {props.bins.map(({ from, count, expected, made }) => {
        const [atX, atY] = [x((100 * expected) / count), y((100 * made) / count)];
        return (
          <g key={from}>
            <circle
              cx={atX}
              cy={atY}
              r={radiusPx(count)}
              fill={paint.paper}
              stroke={paint.ink}
              strokeWidth="2"
            />
            <text
              x={atX - radiusPx(count) - 6}
              y={atY + 4}
              textAnchor="end"
              stroke={paint.paper}
              strokeWidth="4"
              paintOrder="stroke"
            >
              {made} of {count}
            </text>
          </g>
        );
      })}
    </Plot>
  );
}

function radiusPx(count: number): number {
  return 3 + Math.min(9, Math.sqrt(count));
}

import { scaleLinear, scaleUtc } from 'd3-scale';
import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { Plot } from './Plot.tsx';
import { firstThatFits, letters, paint } from './paint.ts';
import { TimeAxes } from './TimeAxes.tsx';
import { timeOf } from './TimeScene.ts';
import { datesUnder } from './timeFrame.ts';

/** A stretch of the log with the reps that it tells of; null: it tells too little. */
export interface RepsStretch {
  from: string;
  to: string;
  reps: Belief | null;
}

const room = { left: 34, right: 12, top: 12, bottom: 26 };
/** Clear paper between two stretches (px). */
const betweenPx = 3;
const mostFigures = 6;
/** Under more of the width the scale would count weeks; a season is read in months. */
const datesPx = 500;
const msADay = 86_400_000;

/** Reps over the season: a box as wide as its stretch, its ranges as high as they are, the middle a heavy line with its number. */
export function CapacityTime(props: {
  label: string;
  stretches: readonly RepsStretch[];
  widthPx: number;
  heightPx: number;
}) {
  const { label, stretches, widthPx, heightPx } = props;
  const first = stretches[0];
  const last = stretches[stretches.length - 1];
  if (first === undefined || last === undefined) return null;
  const [left, right, floor] = [room.left, widthPx - room.right, heightPx - room.bottom];
  const x = scaleUtc([timeOf(first.from), timeOf(last.to) + msADay], [left, right]);
  const told = stretches.flatMap(({ reps }) => reps ?? []);
  const most = Math.max(1, ...told.map(({ high95 }) => high95));
  const fewest = Math.min(most - 1, ...told.map(({ low95 }) => low95));
  const y = scaleLinear([Math.max(0, Math.floor(fewest - 0.5)), most + 0.2], [floor, room.top]);
  return (
    <Plot label={`${label}. ${stretches.map(spoken).join(' ')}`} widthPx={widthPx} heightPx={heightPx}>
      <TimeAxes
        {...{ y, left, right, floor, heightPx }}
        figures={y.ticks(mostFigures).filter(Number.isInteger)}
        dates={datesUnder(x, Math.min(right - left, datesPx))}
        datesPx={floor}
      />
      {stretches.map(({ from, to, reps }) => {
        const box = { fromX: x(timeOf(from)), toX: x(timeOf(to) + msADay) - betweenPx, y };
        return reps === null ? (
          <Silent key={from} {...box} floorY={floor} topY={room.top} />
        ) : (
          <Box key={from} {...box} reps={reps} />
        );
      })}
    </Plot>
  );
}

function Box(props: { fromX: number; toX: number; y: (reps: number) => number; reps: Belief }) {
  const { fromX, toX, y, reps } = props;
  const strip = { x: fromX, width: toX - fromX, fill: paint.ink };
  return (
    <g>
      <rect {...strip} y={y(reps.high95)} height={y(reps.low95) - y(reps.high95)} fillOpacity="0.1" />
      <rect {...strip} y={y(reps.high80)} height={y(reps.low80) - y(reps.high80)} fillOpacity="0.16" />
      {[reps.low95, reps.high95].map((edge) => (
        <path
          key={edge}
          d={`M${fromX} ${y(edge)}H${toX}`}
          stroke={paint.ink}
          strokeWidth="0.75"
          strokeDasharray="2 2"
        />
      ))}
      <path d={`M${fromX} ${y(reps.median)}H${toX}`} stroke={paint.ink} strokeWidth="2.5" />
      <text
        x={(fromX + toX) / 2}
        y={y(reps.median) - 6}
        textAnchor="middle"
        fontSize={letters.tag}
        fontWeight="640"
        fill={paint.ink}
        stroke={paint.paper}
        strokeWidth="3"
        paintOrder="stroke"
      >
        {reps.median.toFixed(1)}
      </text>
    </g>
  );
}

/** Where a stretch tells too little, its place stays empty and says so. */
function Silent(props: { fromX: number; toX: number; topY: number; floorY: number }) {
  const { fromX, toX, topY, floorY } = props;
  return (
    <text
      x={(fromX + toX) / 2}
      y={(topY + floorY) / 2}
      textAnchor="middle"
      fill={paint.quiet}
      stroke={paint.paper}
      strokeWidth="6"
      paintOrder="stroke"
    >
      {firstThatFits(['tells too little', 'too little', '–'], letters.small, toX - fromX)}
    </text>
  );
}

function spoken({ from, to, reps }: RepsStretch): string {
  const when = `${day(from)} to ${day(to)}`;
  if (reps === null) return `${when}: too little to say.`;
  return `${when}: ${reps.median.toFixed(1)}, between ${reps.low95.toFixed(1)} and ${reps.high95.toFixed(1)} 95 % of the time.`;
}

function day(on: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', dateStyle: 'medium' }).format(timeOf(on));
}

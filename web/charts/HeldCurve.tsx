import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { type ChartUnits, lengthText, massText } from './ChartUnits.ts';
import { Plot } from './Plot.tsx';
import { PlotFrame } from './PlotFrame.tsx';
import { letters, paint, textWidthPx } from './paint.ts';

/** What can be held still at a height; forces in N at the bar. */
export interface HeldPoint {
  zM: number;
  held: Belief;
}

/** Between the figures of two heights (px). */
const clearPx = 24;
const room = { left: 56, right: 64, top: 20, bottom: 44 };

/** What the lifter can hold still at each height of the lift, with the ranges that hold it 80 and 95 % of the time. */
export function HeldCurve(props: {
  label: string;
  points: readonly HeldPoint[];
  units: ChartUnits;
  widthPx: number;
  heightPx: number;
}) {
  const { label, points, units, widthPx, heightPx } = props;
  const first = points[0];
  const last = points[points.length - 1];
  if (first === undefined || last === undefined) return null;
  const floor = heightPx - room.bottom;
  const toX = widthPx - room.right;
  const mostMass = Math.max(...points.map(({ held }) => held.high95)) / units.newtonPerMass;
  const x = scaleLinear([0, mostMass * 1.02], [room.left, toX]);
  const y = scaleLinear([first.zM, last.zM], [floor, room.top]);
  const at = (forceN: number) => x(Math.max(0, forceN) / units.newtonPerMass);
  const strip = (low: keyof Belief, high: keyof Belief) =>
    area<HeldPoint>()
      .y((p) => y(p.zM))
      .x0((p) => at(p.held[low]))
      .x1((p) => at(p.held[high]))(points) ?? '';
  const course = (of: keyof Belief) =>
    line<HeldPoint>(
      (p) => at(p.held[of]),
      (p) => y(p.zM),
    )(points) ?? '';
  const bottomText = `${massText(units, first.held.median)} ${units.massUnit}`;
  // The line leans to the right from there, so that its number stands before it, or in it where there is no room.
  const bottomRightX = Math.max(
    at(first.held.low95) - 8,
    room.left + 4 + textWidthPx(bottomText, letters.tag),
  );
  return (
    <Plot
      label={`${label}: ${said(first, units)} at the bottom, ${said(last, units)} at lockout.`}
      widthPx={widthPx}
      heightPx={heightPx}
    >
      <PlotFrame
        x={x}
        y={y}
        along={x.ticks(Math.max(2, Math.floor((toX - room.left) / 70)))}
        up={heightsBeside(y, units).map((zM) => ({ value: zM, word: lengthText(units, zM) }))}
        leftPx={room.left}
        rightPx={toX}
        floorPx={floor}
      />
      <text x={toX} y={floor + 36} textAnchor="end" fill={paint.quiet}>
        {units.massUnit} on the bar, held still
      </text>
      <path d={strip('low95', 'high95')} fill={paint.ink} fillOpacity="0.1" />
      <path d={strip('low80', 'high80')} fill={paint.ink} fillOpacity="0.16" />
      {(['low95', 'high95'] as const).map((of) => (
        <path
          key={of}
          d={course(of)}
          fill="none"
          stroke={paint.ink}
          strokeWidth="0.75"
          strokeDasharray="2 2"
        />
      ))}
      <path d={course('median')} fill="none" stroke={paint.ink} strokeWidth="3" />
      <text {...number} x={at(last.held.high95) + 6} y={y(last.zM) + 6}>
        {massText(units, last.held.median)} {units.massUnit}
      </text>
      <text {...number} x={bottomRightX} y={y(first.zM) - 6} textAnchor="end">
        {bottomText}
      </text>
    </Plot>
  );
}

/** Both ends, and round heights between them that stand clear of these. */
function heightsBeside(y: ScaleLinear<number, number>, { metrePerLength }: ChartUnits): number[] {
  const [low = 0, high = 0] = y.domain();
  const between = scaleLinear([low / metrePerLength, high / metrePerLength], y.range())
    .ticks(5)
    .map((height) => height * metrePerLength)
    .filter((zM) => [low, high].every((end) => Math.abs(y(zM) - y(end)) > clearPx));
  return [low, ...between, high];
}

const number = {
  fontSize: letters.tag,
  fontWeight: 640,
  fill: paint.ink,
  stroke: paint.paper,
  strokeWidth: 3,
  paintOrder: 'stroke',
} as const;

function said({ held }: HeldPoint, units: ChartUnits): string {
  const mass = (forceN: number) => massText(units, forceN);
  return `${mass(held.median)} ${units.massUnit}, between ${mass(held.low95)} and ${mass(held.high95)} 95 % of the time,`;
}

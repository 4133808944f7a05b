import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { useId } from 'react';
import { type ChartUnits, lengthText } from './ChartUnits.ts';
import { curveNames, type Place } from './curveNames.ts';
import { Plot } from './Plot.tsx';
import { PlotFrame } from './PlotFrame.tsx';
import { paint } from './paint.ts';

/** The fitted curve of one direction at a row of lengths, as `bandTensionInterval` of the core gives it. */
export interface BandFitCurve {
  direction: 'loading' | 'unloading';
  points: readonly {
    lengthM: number;
    tensionN: number;
    low95N: number;
    high95N: number;
    extrapolated: boolean;
  }[];
}

type CurvePoint = BandFitCurve['points'][number];

/** One reading of this band, as a mark. */
export interface BandFitReading {
  lengthM: number;
  forceN: number;
  direction: 'loading' | 'unloading';
  /** The reading typed just now is ringed. */
  fresh?: boolean;
}

const room = { left: 44, right: 20, top: 32, bottom: 44 };

/**
 * One loop's force against its length: readings while lengthening as filled circles, while shortening as open squares; the
 * fitted curve with its 95 % band, dashed where nothing was read; a mark at the longest length read.
 */
export function BandFit(props: {
  label: string;
  restLengthM: number;
  readings: readonly BandFitReading[];
  curves: readonly BandFitCurve[];
  /** Longest length read; null where nothing was read. */
  measuredToM: number | null;
  /** Beyond this length the club stretches no band; shown where the drawing reaches it. */
  safeM?: number | undefined;
  /** Curves to compare with, thin and dotted, named at their end: the other loop, an earlier date. */
  others?: readonly { name: string; points: readonly { lengthM: number; tensionN: number }[] }[] | undefined;
  units: ChartUnits;
  widthPx: number;
  heightPx: number;
}) {
  const { units, readings, curves, others = [], measuredToM, safeM, restLengthM, widthPx, heightPx } = props;
  const clip = useId();
  const points = curves.flatMap((curve) => curve.points);
  const longestM = Math.max(
    restLengthM * 1.2,
    ...readings.map((r) => r.lengthM),
    ...points.map((p) => p.lengthM),
  );
  const strongestN = Math.max(
    10,
    ...readings.map((r) => r.forceN),
    ...points.map((p) => p.tensionN),
    ...points.map((p) => Math.min(p.high95N, p.tensionN * 1.6)),
    ...others.flatMap((other) => other.points.map((p) => p.tensionN)),
  );
  const x = scaleLinear(
    [(restLengthM * 0.95) / units.metrePerLength, longestM / units.metrePerLength],
    [room.left, widthPx - room.right],
  );
  const y = scaleLinear([0, (strongestN * 1.06) / units.newtonPerMass], [heightPx - room.bottom, room.top]);
  const px = (lengthM: number) => x(lengthM / units.metrePerLength);
  const py = (forceN: number) => y(forceN / units.newtonPerMass);
  const floorY = heightPx - room.bottom;
  const placesOf = (points: readonly { lengthM: number; tensionN: number }[]) =>
    points.map(({ lengthM, tensionN }): Place => [px(lengthM), py(tensionN)]);
  const besides = others.map(({ name, points }) => ({ name, places: placesOf(points) }));
  return (
    <Plot label={summary(props)} widthPx={widthPx} heightPx={heightPx}>
      <clipPath id={clip}>
        <rect
          x={room.left}
          y={room.top}
          width={widthPx - room.left - room.right}
          height={floorY - room.top}
        />
      </clipPath>
      <PlotFrame
        x={x}
        y={y}
        along={x.ticks(Math.max(3, Math.floor(widthPx / 90)))}
        up={y.ticks(Math.max(3, Math.floor(heightPx / 60))).map((value) => ({ value, word: String(value) }))}
        leftPx={room.left}
        rightPx={widthPx - room.right}
        floorPx={floorY}
      />
      <text x="4" y="14" fill={paint.quiet}>
        the scale shows, {units.massUnit}
      </text>
      <text x={widthPx - room.right} y={heightPx - 8} textAnchor="end" fill={paint.quiet}>
        length of the loop, {units.lengthUnit}
      </text>
      <g clipPath={`url(#${clip})`}>
        {curves.map((curve) => (
          <FittedCurve key={curve.direction} curve={curve} px={px} py={py} />
        ))}
      </g>
      <OtherCurves fitted={curves.map(({ points }) => placesOf(points))} others={besides} />
      {measuredToM !== null && (
        <MeasuredTo
          x={px(measuredToM)}
          topY={room.top}
          floorY={floorY}
          text={`read to ${lengthText(units, measuredToM)}`}
        />
      )}
      {safeM !== undefined && safeM < longestM && (
        <SafeTo
          x={px(safeM)}
          toX={widthPx - room.right}
          topY={room.top}
          floorY={floorY}
          text={`no further than ${lengthText(units, safeM)}`}
        />
      )}
      {readings.map((reading, i) => (
        <ReadingMark
          key={`${reading.lengthM} ${i}`}
          reading={reading}
          x={px(reading.lengthM)}
          y={py(reading.forceN)}
        />
      ))}
    </Plot>
  );
}

function FittedCurve(props: { curve: BandFitCurve; px: (m: number) => number; py: (n: number) => number }) {
  const { curve, px, py } = props;
  const loading = curve.direction === 'loading';
  const firstBeyond = curve.points.findIndex((p) => p.extrapolated);
  const within = firstBeyond < 0 ? curve.points : curve.points.slice(0, firstBeyond);
  const beyond = firstBeyond < 0 ? [] : curve.points.slice(Math.max(0, firstBeyond - 1));
  const draw = line<CurvePoint>(
    (p) => px(p.lengthM),
    (p) => py(p.tensionN),
  );
  const strip = area<CurvePoint>()
    .x((p) => px(p.lengthM))
    .y0((p) => py(Math.max(0, p.low95N)))
    .y1((p) => py(p.high95N));
  const width = loading ? 2.5 : 1.5;
  return (
    <g>
      <path d={strip(curve.points) ?? ''} fill={paint.rubber} fillOpacity={loading ? 0.18 : 0.1} />
      <path d={draw(within) ?? ''} fill="none" stroke={paint.rubber} strokeWidth={width} />
      <path
        d={draw(beyond) ?? ''}
        fill="none"
        stroke={paint.rubber}
        strokeWidth={width}
        strokeDasharray="7 5"
      />
    </g>
  );
}

function ReadingMark({ reading, x, y }: { reading: BandFitReading; x: number; y: number }) {
  return (
    <g>
      {reading.fresh && <circle cx={x} cy={y} r="11" fill="none" stroke={paint.ink} />}
      {reading.direction === 'loading' ? (
        <circle cx={x} cy={y} r="5" fill={paint.ink} stroke={paint.paper} strokeWidth="1.5" />
      ) : (
        <rect
          x={x - 4.5}
          y={y - 4.5}
          width="9"
          height="9"
          fill={paint.paper}
          stroke={paint.ink}
          strokeWidth="2"
        />
      )}
    </g>
  );
}

function MeasuredTo({ x, topY, floorY, text }: { x: number; topY: number; floorY: number; text: string }) {
  return (
    <g>
      <path d={`M${x} ${topY}V${floorY}`} stroke={paint.ink} strokeDasharray="1 4" strokeLinecap="round" />
      <text
        x={x - 6}
        y={floorY - 8}
        textAnchor="end"
        fill={paint.quiet}
        stroke={paint.paper}
        strokeWidth="3"
        paintOrder="stroke"
      >
        {text}
      </text>
    </g>
  );
}

function OtherCurves(props: {
  fitted: readonly (readonly Place[])[];
  others: readonly { name: string; places: readonly Place[] }[];
}) {
  const draw = line<Place>();
  return (
    <g>
      {props.others.map(({ name, places }) => (
        <path
          key={name}
          d={draw([...places]) ?? ''}
          fill="none"
          stroke={paint.ink}
          strokeWidth="1.5"
          strokeDasharray="1 5"
          strokeLinecap="round"
        />
      ))}
      {curveNames(props.fitted, props.others).map(({ name, x, y }) => (
        <text
          key={name}
          x={x}
          y={y}
          textAnchor="end"
          fill={paint.ink}
          stroke={paint.paper}
          strokeWidth="3"
          paintOrder="stroke"
        >
          {name}
        </text>
      ))}
    </g>
  );
}

function SafeTo(props: { x: number; toX: number; topY: number; floorY: number; text: string }) {
  const { x, toX, topY, floorY, text } = props;
  return (
    <g>
      <rect
        x={x}
        y={topY}
        width={Math.max(0, toX - x)}
        height={floorY - topY}
        fill={paint.stop}
        fillOpacity="0.07"
      />
      <path d={`M${x} ${topY}V${floorY}`} stroke={paint.stop} strokeWidth="2" />
      <text
        x={x - 6}
        y={floorY - 26}
        textAnchor="end"
        fill={paint.stop}
        stroke={paint.paper}
        // Wide enough that a line behind the words does not show between them.
        strokeWidth="8"
        strokeLinejoin="round"
        paintOrder="stroke"
      >
        {text}
      </text>
    </g>
  );
}

function summary(props: Parameters<typeof BandFit>[0]): string {
  const { units, readings, measuredToM } = props;
  const read = readings
    .map(
      (r) =>
        `${lengthText(units, r.lengthM)} ${Math.round(r.forceN / units.newtonPerMass)} ${units.massUnit} ${r.direction}`,
    )
    .join('; ');
  const to = measuredToM === null ? 'nothing read yet' : `read to ${lengthText(units, measuredToM)}`;
  return `${props.label}: pull against length, ${to}.${read ? ` Readings: ${read}.` : ''}`;
}

import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import { fromSi } from '#core/units/units.ts';
import { Plot } from '#web/charts/Plot.tsx';
import { PlotFrame } from '#web/charts/PlotFrame.tsx';
import { letters, paint, textWidthPx } from '#web/charts/paint.ts';

const heightPx = 280;
const room = { left: 52, right: 16, top: 44, bottom: 44 };

/** How likely each bar is made, from nearly sure to nearly out of reach; bars with a meaning of their own as upright lines. */
export function ChanceCurve(props: {
  label: string;
  chances: LiftProjection['chances'];
  marks: readonly { barKg: number; word: string }[];
  unit: 'kg' | 'lb';
  widthPx: number;
}) {
  const { chances, unit, widthPx } = props;
  const [first, last] = [chances[0]!.barKg, chances.at(-1)!.barKg];
  const floor = heightPx - room.bottom;
  const x = scaleLinear([fromSi(first, unit), fromSi(last, unit)], [room.left, widthPx - room.right]);
  const y = scaleLinear([0, 1], [floor, room.top]);
  const atKg = (kg: number) => x(fromSi(kg, unit));
  const marks = props.marks.filter(({ barKg }) => barKg >= first && barKg <= last);
  const path = line<LiftProjection['chances'][number]>(
    ({ barKg }) => atKg(barKg),
    ({ chance }) => y(chance),
  ).curve(curveMonotoneX)([...chances]);
  return (
    <Plot
      label={`${props.label}. The table beside it shows the same.`}
      widthPx={widthPx}
      heightPx={heightPx}
      fill={paint.quiet}
    >
      <PlotFrame
        x={x}
        y={y}
        along={x.ticks(Math.max(3, Math.floor(widthPx / 90)))}
        up={[0, 0.25, 0.5, 0.75, 1].map((share) => ({ value: share, word: `${100 * share} %` }))}
        leftPx={room.left}
        rightPx={widthPx - room.right}
        floorPx={floor}
      />
      <text x={widthPx - room.right} y={floor + 36} textAnchor="end">
        {unit} on the bar
      </text>
      {marks.map(({ barKg, word }, i) => (
        <g key={word}>
          <path
            d={`M${atKg(barKg)} ${room.top - 8 - 16 * i}V${floor}`}
            stroke={paint.ink}
            strokeDasharray="2 4"
          />
          <text x={wordX(atKg(barKg), word, widthPx)} y={room.top - 12 - 16 * i} textAnchor="middle">
            {word}
          </text>
        </g>
      ))}
      <path d={path ?? ''} fill="none" stroke={paint.ink} strokeWidth="2.5" />
      {chances.map(({ barKg, chance }) => (
        <circle key={barKg} cx={atKg(barKg)} cy={y(chance)} r="2.5" fill={paint.ink} />
      ))}
    </Plot>
  );
}

function wordX(at: number, word: string, widthPx: number): number {
  const half = textWidthPx(word, letters.small) / 2;
  return Math.min(widthPx - room.right - half, Math.max(room.left + half, at));
}

import { scaleLinear, scaleUtc } from 'd3-scale';
import { line } from 'd3-shape';
import type { BodyMass } from '#contract/records/lifters.ts';
import { dateText } from '#contract/words/dateText.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { Plot } from '#web/charts/Plot.tsx';
import { letters, paint } from '#web/charts/paint.ts';
import { TimeAxes } from '#web/charts/TimeAxes.tsx';
import { datesUnder } from '#web/charts/timeFrame.ts';

const heightPx = 136;
const room = { left: 44, right: 72, top: 12, bottom: 28 };

/** Body mass by date: every weighing a dot, the newest with its number. */
export function BodyMassLine(props: { masses: readonly BodyMass[]; unit: MassUnit; widthPx: number }) {
  const { unit, widthPx } = props;
  const points = props.masses
    .map((mass) => ({ date: new Date(`${mass.takenOn}T00:00:00Z`), value: fromSi(mass.massKg, unit), mass }))
    .sort((a, b) => a.date.getTime() - b.date.getTime());
  const first = points[0];
  const last = points[points.length - 1];
  if (first === undefined || last === undefined) return null;
  const values = points.map((p) => p.value);
  const spare = fromSi(1, unit);
  const right = widthPx - room.right;
  const floor = heightPx - room.bottom;
  const x = scaleUtc([first.date, last.date], [room.left, right]);
  const y = scaleLinear([Math.min(...values) - spare, Math.max(...values) + spare], [floor, room.top]);
  const path =
    line<(typeof points)[number]>(
      (p) => x(p.date),
      (p) => y(p.value),
    )(points) ?? '';
  const label = `Body mass from ${dateText(first.mass.takenOn)}, ${written(first.mass.massKg, unit)} ${unit}, to ${dateText(last.mass.takenOn)}, ${written(last.mass.massKg, unit)} ${unit}.`;
  return (
    <Plot label={label} widthPx={widthPx} heightPx={heightPx}>
      <TimeAxes
        {...{ y, floor, heightPx }}
        figures={y.ticks(4)}
        left={room.left}
        right={right}
        dates={points.length > 1 ? datesUnder(x, right - room.left) : []}
        datesPx={floor}
      />
      <path d={path} fill="none" stroke={paint.ink} strokeWidth="1.5" />
      {points.map((p) => (
        <circle key={p.mass.id} cx={x(p.date)} cy={y(p.value)} r="2.5" fill={paint.ink} />
      ))}
      <text
        x={x(last.date) + 8}
        y={y(last.value) + 5}
        fontWeight="640"
        fontSize={letters.tag}
        fill={paint.ink}
      >
        {written(last.mass.massKg, unit)} {unit}
      </text>
    </Plot>
  );
}

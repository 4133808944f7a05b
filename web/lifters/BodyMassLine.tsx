import { scaleLinear, scaleUtc } from 'd3-scale';
import { line } from 'd3-shape';
import type { BodyMass } from '#contract/records/lifters.ts';
import { fromSi } from '#core/units/units.ts';
import { letters, paint } from '#web/charts/paint.ts';
import { dateText } from '#web/parts/localToday.ts';
import type { MassUnit } from '#web/parts/ViewUnits.tsx';
import { written } from '#web/parts/written.ts';

const heightPx = 136;
const room = { left: 44, right: 64, top: 12, bottom: 28 };

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
  const x = scaleUtc([first.date, last.date], [room.left, widthPx - room.right]);
  const y = scaleLinear(
    [Math.min(...values) - spare, Math.max(...values) + spare],
    [heightPx - room.bottom, room.top],
  );
  const path =
    line<(typeof points)[number]>(
      (p) => x(p.date),
      (p) => y(p.value),
    )(points) ?? '';
  const label = `Body mass from ${dateText(first.mass.takenOn)}, ${written(first.mass.massKg, unit)} ${unit}, to ${dateText(last.mass.takenOn)}, ${written(last.mass.massKg, unit)} ${unit}.`;
  return (
    <svg
      width={widthPx}
      height={heightPx}
      role="img"
      aria-label={label}
      fontFamily={letters.family}
      fontSize={letters.small}
    >
      {y.ticks(4).map((tick) => (
        <g key={tick}>
          <path d={`M${room.left} ${y(tick)}H${widthPx - room.right}`} stroke={paint.rule} />
          <text x={room.left - 8} y={y(tick) + 4} textAnchor="end" fill={paint.quiet}>
            {tick}
          </text>
        </g>
      ))}
      {points.length > 1 &&
        x.ticks(Math.max(2, Math.floor(widthPx / 160))).map((tick) => (
          <text key={tick.getTime()} x={x(tick)} y={heightPx - 8} textAnchor="middle" fill={paint.quiet}>
            {monthText(tick)}
          </text>
        ))}
      <path d={path} fill="none" stroke={paint.ink} strokeWidth="1.5" />
      {points.map((p) => (
        <circle key={p.mass.id} cx={x(p.date)} cy={y(p.value)} r="2.5" fill={paint.ink} />
      ))}
      <text x={x(last.date) + 8} y={y(last.value) + 5} fontWeight="640" fontSize="15" fill={paint.ink}>
        {written(last.mass.massKg, unit)} {unit}
      </text>
    </svg>
  );
}

function monthText(date: Date): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', month: 'short', year: 'numeric' }).format(date);
}

import { line } from 'd3-shape';
import { fromSi } from '#core/units/units.ts';
import { letters, paint } from './paint.ts';
import { type TimeScene, timeOf } from './TimeScene.ts';
import type { TimeFrame } from './timeFrame.ts';

/** Body mass under strength, on the same dates: every weighing a small square, the newest with its number. */
export function MassStrip(props: {
  bodyMasses: TimeScene['bodyMasses'];
  frame: TimeFrame;
  mass: 'kg' | 'lb';
}) {
  const { frame, mass } = props;
  const pane = frame.mass;
  const [fromX = 0, toX = 0] = frame.x.range();
  const points = props.bodyMasses
    .map(({ on, massKg }) => ({ on, x: frame.x(timeOf(on)), value: fromSi(massKg, mass) }))
    .filter(({ x }) => x >= fromX - 1 && x <= toX + 1)
    .sort((a, b) => a.x - b.x);
  const last = points[points.length - 1];
  if (pane === null || last === undefined) return null;
  const path =
    line<(typeof points)[number]>(
      (p) => p.x,
      (p) => pane.y(p.value),
    )(points) ?? '';
  return (
    <g>
      <text x={frame.left} y={pane.top - 6} fill={paint.quiet}>
        body mass, {mass}
      </text>
      {pane.y.ticks(2).map((tick) => (
        <g key={tick}>
          <path d={`M${frame.left} ${pane.y(tick)}H${frame.right}`} stroke={paint.rule} />
          <text x={frame.left - 6} y={pane.y(tick) + 4} textAnchor="end" fill={paint.quiet}>
            {tick}
          </text>
        </g>
      ))}
      <path d={path} fill="none" stroke={paint.ink} strokeWidth="1.2" />
      {points.map(({ on, x, value }) => (
        <rect key={on} x={x - 1.5} y={pane.y(value) - 1.5} width="3" height="3" fill={paint.ink} />
      ))}
      <text x={frame.right + 6} y={pane.y(last.value) + 4} fontSize={letters.tag} fill={paint.ink}>
        {Number(last.value.toFixed(1))} {mass}
      </text>
    </g>
  );
}

import { area, line } from 'd3-shape';
import { paint } from './paint.ts';
import { type TimeScene, timeOf } from './TimeScene.ts';
import type { TimeFrame } from './timeFrame.ts';

type Point = TimeScene['history'][number];

interface Course {
  history: readonly Point[];
  frame: TimeFrame;
  /** A mass in kg as a height in the drawing. */
  atKg: (kg: number) => number;
}

/** The ranges that hold strength with 80 and 95 %, over time; under the marks. */
export function CourseBand(props: Course) {
  const { history, frame, atKg } = props;
  const x = (point: Point) => frame.x(timeOf(point.on));
  const strip = (low: (p: Point) => number, high: (p: Point) => number) =>
    area<Point>()
      .x(x)
      .y0((p) => atKg(low(p)))
      .y1((p) => atKg(high(p)))(history) ?? '';
  const edge = (of: (p: Point) => number) => line<Point>(x, (p) => atKg(of(p)))(history) ?? '';
  return (
    <g>
      <path
        d={strip(
          (p) => p.low95,
          (p) => p.high95,
        )}
        fill={paint.ink}
        fillOpacity="0.1"
      />
      <path
        d={strip(
          (p) => p.low80,
          (p) => p.high80,
        )}
        fill={paint.ink}
        fillOpacity="0.16"
      />
      {[(p: Point) => p.low95, (p: Point) => p.high95].map((of, i) => (
        <path key={i} d={edge(of)} fill="none" stroke={paint.ink} strokeWidth="0.75" strokeDasharray="2 2" />
      ))}
    </g>
  );
}

/** The middle of what is believed, over the marks: a heavy line with a clear edge. */
export function CourseLine({ history, frame, atKg }: Course) {
  const course =
    line<Point>(
      (point) => frame.x(timeOf(point.on)),
      (point) => atKg(point.median),
    )(history) ?? '';
  return (
    <g fill="none" strokeLinejoin="round">
      <path d={course} stroke={paint.paper} strokeOpacity="0.8" strokeWidth="6" />
      <path d={course} stroke={paint.ink} strokeWidth="2.5" />
    </g>
  );
}

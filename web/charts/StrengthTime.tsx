import { type KeyboardEvent, memo, type PointerEvent, useId, useMemo } from 'react';
import { counted } from '#contract/words/counted.ts';
import { fromSi } from '#core/units/units.ts';
import { CourseBand, CourseLine } from './CourseBand.tsx';
import { MarkShape } from './MarkShape.tsx';
import { MassStrip } from './MassStrip.tsx';
import { MeetRules } from './MeetRules.tsx';
import { Plot } from './Plot.tsx';
import { paint } from './paint.ts';
import { TimeAxes } from './TimeAxes.tsx';
import { type TimeScene, timeOf } from './TimeScene.ts';
import { nearestMark, type PlacedMark, placedMarks, type TimeFrame, timeFrame } from './timeFrame.ts';

/** How far from a mark a finger or a mouse still means it (px). */
const fingerPx = 28;
/** Marks that a page key skips. */
const pageMarks = 10;
/** More marks than this for each pixel of width are a crowd, and drawn smaller. */
const crowd = 0.8;

/**
 * Strength over time with its ranges, every set where it acted, meets as rules, body mass under it. A tap, the mouse or
 * the arrow keys choose a set; a screen reader meets a slider that reads the sets one by one.
 */
export function StrengthTime(props: {
  scene: TimeScene;
  mass: 'kg' | 'lb';
  widthPx: number;
  /** The set that is chosen. */
  chosenKey: string | null;
  onChoose: (key: string | null) => void;
}) {
  const { scene, mass, widthPx, chosenKey, onChoose } = props;
  const frame = useMemo(() => timeFrame(scene, { widthPx, mass }), [scene, widthPx, mass]);
  const placed = useMemo(() => placedMarks(scene, frame, mass), [scene, frame, mass]);
  const chosen = placed.findIndex(({ mark }) => mark.key === chosenKey);

  const choose = (event: PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const near = nearestMark(placed, event.clientX - box.left, event.clientY - box.top, fingerPx);
    if (near >= 0 || event.type === 'pointerdown') onChoose(placed[near]?.mark.key ?? null);
  };
  const press = (event: KeyboardEvent) => {
    const next = markAfter(event.key, chosen, placed.length);
    if (next === null) return;
    event.preventDefault();
    event.stopPropagation();
    onChoose(placed[next]?.mark.key ?? null);
  };
  return (
    <div className="time-picture" style={{ height: frame.heightPx }}>
      <Plot label={summary(scene, mass)} widthPx={widthPx} heightPx={frame.heightPx}>
        <Drawing {...{ scene, frame, placed, mass }} />
        {placed[chosen] && <ChosenRing {...placed[chosen]} />}
      </Plot>
      {placed.length > 0 && (
        <div
          className="time-sets"
          role="slider"
          tabIndex={0}
          aria-label="Sets in the picture"
          aria-valuemin={1}
          aria-valuemax={placed.length}
          aria-valuenow={chosen < 0 ? placed.length : chosen + 1}
          aria-valuetext={
            placed[chosen]?.mark.words ?? `${counted(placed.length, 'set')}; arrow keys read them`
          }
          onPointerDown={choose}
          onPointerMove={(event) => {
            if (event.pointerType === 'mouse') choose(event);
          }}
          onKeyDown={press}
        />
      )}
    </div>
  );
}

/** All but what is chosen: with hundreds of sets it is not drawn again while a mouse moves over it. */
const Drawing = memo(function Drawing(props: {
  scene: TimeScene;
  frame: TimeFrame;
  placed: readonly PlacedMark[];
  mass: 'kg' | 'lb';
}) {
  const { scene, frame, placed, mass } = props;
  const clip = useId();
  const last = scene.history[scene.history.length - 1];
  const atKg = (kg: number) => frame.y(fromSi(kg, mass));
  const scale = placed.length > crowd * (frame.right - frame.left) ? 0.7 : 1;
  return (
    <>
      <clipPath id={clip}>
        <rect
          x={frame.left}
          y={frame.top}
          width={frame.right - frame.left}
          height={frame.floor - frame.top}
        />
      </clipPath>
      <TimeAxes
        {...frame}
        figures={frame.y.ticks(Math.round((frame.floor - frame.top) / 50))}
        datesPx={frame.mass?.floor ?? frame.floor}
      />
      <MeetRules meets={scene.meets} frame={frame} />
      <g clipPath={`url(#${clip})`}>
        <CourseBand history={scene.history} frame={frame} atKg={atKg} />
      </g>
      {inDrawingOrder(placed).map(({ mark, x, y, beyond }) => (
        <MarkShape
          key={mark.key}
          {...{ x, y, beyond }}
          scale={scale}
          says={mark.says}
          doubted={mark.doubted}
          record={mark.record}
        />
      ))}
      <g clipPath={`url(#${clip})`}>
        <CourseLine history={scene.history} frame={frame} atKg={atKg} />
      </g>
      {last && (
        <text x={frame.right + 6} y={atKg(last.median) + 5} fontSize="15" fontWeight="640" fill={paint.ink}>
          {Math.round(fromSi(last.median, mass))} {mass}
        </text>
      )}
      <MassStrip bodyMasses={scene.bodyMasses} frame={frame} mass={mass} />
    </>
  );
});

function ChosenRing({ x, y }: PlacedMark) {
  return (
    <g>
      <circle cx={x} cy={y} r="11" fill="none" stroke={paint.paper} strokeWidth="5" />
      <circle cx={x} cy={y} r="11" fill="none" stroke={paint.ink} strokeWidth="2" />
    </g>
  );
}

/** What says most is drawn last: many made sets lie under records and doubts. */
function inDrawingOrder(placed: readonly PlacedMark[]): PlacedMark[] {
  return placed.toSorted((a, b) => weightOf(a) - weightOf(b));
}

function weightOf({ mark }: PlacedMark): number {
  return (mark.doubted ? 4 : 0) + (mark.record ? 2 : 0) + (mark.says === 'atLeast' ? 0 : 1);
}

function markAfter(key: string, chosen: number, count: number): number | null {
  const from = chosen < 0 ? count : chosen;
  const inside = (index: number) => Math.min(count - 1, Math.max(0, index));
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return inside(from - 1);
    case 'ArrowRight':
    case 'ArrowUp':
      return inside(from + 1);
    case 'PageDown':
      return inside(from - pageMarks);
    case 'PageUp':
      return inside(from + pageMarks);
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    case 'Escape':
      return chosen < 0 ? null : -1;
    default:
      return null;
  }
}

function summary({ title, history, marks, meets }: TimeScene, mass: 'kg' | 'lb'): string {
  const first = history[0];
  const last = history[history.length - 1];
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))} ${mass}`;
  if (first === undefined || last === undefined) return `${title}: nothing yet.`;
  return `${title}: ${whole(first.median)} on ${day(first.on)}, ${whole(last.median)} on ${day(last.on)}, between ${whole(last.low95)} and ${whole(last.high95)} 95 % of the time. ${counted(marks.length, 'set')}, ${counted(meets.length, 'meet')}.`;
}

function day(on: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', dateStyle: 'medium' }).format(timeOf(on));
}

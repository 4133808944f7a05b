import { type ScaleLinear, type ScaleTime, scaleLinear, scaleUtc } from 'd3-scale';
import { fromSi } from '#core/units/units.ts';
import { letters, textWidthPx } from './paint.ts';
import { type SetMark, type TimeScene, timeOf } from './TimeScene.ts';

/** Where everything of the picture stands (px). */
export interface TimeFrame {
  widthPx: number;
  heightPx: number;
  left: number;
  right: number;
  /** Pane of strength. */
  top: number;
  floor: number;
  /** Pane of body mass under it; null where nobody was weighed. */
  mass: { top: number; floor: number; y: ScaleLinear<number, number> } | null;
  x: ScaleTime<number, number>;
  y: ScaleLinear<number, number>;
  dates: readonly { atPx: number; text: string }[];
}

/** A mark with its place; `beyond`: it lies outside the pane and is drawn at its edge. */
export interface PlacedMark {
  mark: SetMark;
  x: number;
  y: number;
  beyond: 'above' | 'below' | null;
}

const room = { left: 40, right: 62, top: 34, between: 26, dates: 24 };
/** The pane reaches this far below and above what is believed, so that light sets do not press the course flat. */
const reach = { below: 0.82, above: 1.1 };

/** A mark beyond the top stands so far under it that its arrow stays clear of the names of meets (px). */
const edgePx = 16;

/** Scales and panes for a scene at a width; `mass` is the unit of its letters. */
export function timeFrame(
  scene: TimeScene,
  { widthPx, mass }: { widthPx: number; mass: 'kg' | 'lb' },
): TimeFrame {
  const strengthPx = widthPx < 520 ? 230 : 320;
  const massPx = scene.bodyMasses.length === 0 ? 0 : widthPx < 520 ? 64 : 80;
  const floor = room.top + strengthPx;
  const massFloor = floor + (massPx === 0 ? 0 : room.between + massPx);
  const right = widthPx - room.right;
  const times = [...scene.history, ...scene.marks].map(({ on }) => timeOf(on));
  const from = scene.from === null ? Math.min(...times) : timeOf(scene.from);
  const to = Math.max(...times);
  // A single day still has a width.
  const x = scaleUtc([from, to > from ? to : from + 7 * 86_400_000], [room.left, right]);
  const low = Math.min(...scene.history.map(({ low95 }) => low95));
  const high = Math.max(...scene.history.map(({ high95 }) => high95));
  const y = scaleLinear(
    [fromSi(low * reach.below, mass), fromSi(high * reach.above, mass)],
    [floor, room.top],
  );
  const weighed = scene.bodyMasses.map(({ massKg }) => fromSi(massKg, mass));
  return {
    widthPx,
    heightPx: massFloor + room.dates,
    left: room.left,
    right,
    top: room.top,
    floor,
    mass:
      massPx === 0
        ? null
        : {
            top: floor + room.between,
            floor: massFloor,
            y: scaleLinear(
              [Math.min(...weighed) - fromSi(1, mass), Math.max(...weighed) + fromSi(1, mass)],
              [massFloor, floor + room.between],
            ),
          },
    x,
    y,
    dates: datesUnder(x, right - room.left),
  };
}

/** Every mark with its place, those beyond the pane at its edge, in the order of the scene. */
export function placedMarks(
  { marks }: TimeScene,
  { x, y, top, floor }: TimeFrame,
  mass: 'kg' | 'lb',
): PlacedMark[] {
  return marks.map((mark) => {
    const at = y(fromSi(mark.straightKg, mass));
    const beyond = at < top ? 'above' : at > floor ? 'below' : null;
    return {
      mark,
      x: x(timeOf(mark.on)),
      y: beyond === 'above' ? top + edgePx : Math.min(floor - 6, at),
      beyond,
    };
  });
}

/** The place of the mark nearest to a point, if it is within a thumb's reach; -1: none. */
export function nearestMark(placed: readonly PlacedMark[], x: number, y: number, reachPx: number): number {
  let nearest = -1;
  let least = reachPx * reachPx;
  placed.forEach((mark, i) => {
    const distance = (mark.x - x) ** 2 + (mark.y - y) ** 2;
    if (distance <= least) {
      least = distance;
      nearest = i;
    }
  });
  return nearest;
}

/**
 * As many dates as stand clear of each other, evenly: days where the scale's steps are days, else months. The year stands with the first
 * one and with each January.
 */
export function datesUnder(x: ScaleTime<number, number>, widthPx: number): TimeFrame['dates'] {
  // Over a week on a wide screen the scale counts hours; a log counts days.
  const ticks = x
    .ticks(Math.max(3, Math.floor(widthPx / 36)))
    .filter((date) => date.getTime() % 86_400_000 === 0);
  const byDay = ticks.some((date) => date.getUTCDate() !== 1);
  const january = Math.max(
    0,
    ticks.findIndex((date) => date.getUTCMonth() === 0),
  );
  for (let every = 1; ; every++) {
    const offset = byDay ? 0 : january % every;
    const dates = ticks
      .filter((_, i) => i % every === offset)
      .map((date, i) => ({ atPx: x(date), text: dateWords(date, byDay, i === 0) }));
    if (every >= ticks.length || standClear(dates)) return dates;
  }
}

function dateWords(date: Date, byDay: boolean, isFirst: boolean): string {
  const style: Intl.DateTimeFormatOptions = byDay
    ? { day: 'numeric', month: 'short' }
    : isFirst || date.getUTCMonth() === 0
      ? { month: 'short', year: 'numeric' }
      : { month: 'short' };
  return new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', ...style }).format(date);
}

function standClear(dates: TimeFrame['dates']): boolean {
  return dates.every((date, i) => {
    const next = dates[i + 1];
    return next === undefined || date.atPx + halfPx(date) + betweenDatesPx <= next.atPx - halfPx(next);
  });
}

const betweenDatesPx = 16;

function halfPx({ text }: { text: string }): number {
  return textWidthPx(text, letters.small) / 2;
}

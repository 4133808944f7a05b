import { offsetS, writtenAsUtc } from '#contract/calendar/wallTime.ts';

/**
 * The rules of a time zone as a component VTIMEZONE (RFC 5545, 3.6.5), good for every local time of the years from `first` to `last`:
 * the offset at their beginning, and every change of the clocks after it.
 */
export function zoneRules(timeZone: string, first: number, last: number): string {
  const fromMs = Date.UTC(first - 1, 11, 30);
  const untilMs = Date.UTC(last + 1, 0, 3);
  const atFirst = offsetS(fromMs, timeZone);
  const changes = changesOf(timeZone, fromMs, untilMs);
  return [
    'BEGIN:VTIMEZONE',
    `TZID:${zoneName(timeZone)}`,
    ...observance({ atMs: fromMs, before: atFirst, after: atFirst }),
    ...changes.flatMap(observance),
    'END:VTIMEZONE',
  ].join('\r\n');
}

/** What a zone is called in a file: one that is only an offset, +05:45, without the colon, which would end the name. */
export function zoneName(timeZone: string): string {
  return timeZone.replaceAll(':', '');
}

/** From when on the clocks of a zone are how far ahead of UTC, in seconds. */
interface ClockChange {
  atMs: number;
  before: number;
  after: number;
}

function changesOf(timeZone: string, fromMs: number, untilMs: number): ClockChange[] {
  const changes: ClockChange[] = [];
  let before = offsetS(fromMs, timeZone);
  for (let weekMs = fromMs; weekMs < untilMs; weekMs += aWeekMs) {
    const after = offsetS(weekMs + aWeekMs, timeZone);
    if (before !== after) changes.push({ atMs: turn(timeZone, weekMs, weekMs + aWeekMs), before, after });
    before = after;
  }
  return changes;
}

/** The first second of the new offset, between an instant of the old one and one of the new. */
function turn(timeZone: string, oldMs: number, newMs: number): number {
  const old = offsetS(oldMs, timeZone);
  let [low, high] = [oldMs / 1000, newMs / 1000];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (offsetS(middle * 1000, timeZone) === old) low = middle;
    else high = middle;
  }
  return high * 1000;
}

/** It begins at a time that the clocks of before would show. */
function observance({ atMs, before, after }: ClockChange): string[] {
  const sort = after > before ? 'DAYLIGHT' : 'STANDARD';
  return [
    `BEGIN:${sort}`,
    `DTSTART:${writtenAsUtc(atMs + before * 1000).replaceAll(/[-:]/g, '')}`,
    `TZOFFSETFROM:${offsetText(before)}`,
    `TZOFFSETTO:${offsetText(after)}`,
    `END:${sort}`,
  ];
}

/** +0100, -0930; seconds only where there are any, as in zones of long ago. */
function offsetText(seconds: number): string {
  const size = Math.abs(seconds);
  const rest = size % 60 === 0 ? '' : two(size % 60);
  return `${seconds < 0 ? '-' : '+'}${two(Math.floor(size / 3600))}${two(Math.floor(size / 60) % 60)}${rest}`;
}

function two(figure: number): string {
  return String(figure).padStart(2, '0');
}

/** No zone puts its clocks forward and back within one; where they stand back for a month of fasting it is four. */
const aWeekMs = 7 * 86_400_000;

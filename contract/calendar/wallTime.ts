/**
 * Between instants (milliseconds since 1970 in UTC) and what the clocks on the wall of a time zone show, spelled 2026-11-25T18:30:00.
 * The zone's rules are those that this machine knows (the tz database, through Intl).
 */

/** How far the zone's clocks are ahead of UTC at an instant, in seconds. */
export function offsetS(instantMs: number, timeZone: string): number {
  const shown = Object.fromEntries(
    clockOf(timeZone)
      .formatToParts(instantMs)
      .map(({ type, value }) => [type, Number(value)]),
  ) as Record<'year' | 'month' | 'day' | 'hour' | 'minute' | 'second', number>;
  const { year, month, day, hour, minute, second } = shown;
  return (
    Math.round(Date.UTC(year, month - 1, day, hour, minute, second) / 1000) - Math.floor(instantMs / 1000)
  );
}

/** What the clocks show at an instant. */
export function wallTimeAt(instantMs: number, timeZone: string): string {
  return writtenAsUtc(instantMs + offsetS(instantMs, timeZone) * 1000);
}

/**
 * When the clocks show a time. One that they show twice is the first of the two, and one that they leave out is counted by the offset
 * before they go forward, as RFC 5545, 3.3.5, reads both.
 */
export function instantOf(wallTime: string, timeZone: string): number {
  const asUtcMs = Date.parse(`${wallTime}Z`);
  const before = offsetS(asUtcMs - dayMs, timeZone);
  const after = offsetS(asUtcMs + dayMs, timeZone);
  const possible = [before, after]
    .map((offset) => asUtcMs - offset * 1000)
    .filter((instantMs) => wallTimeAt(instantMs, timeZone) === writtenAsUtc(asUtcMs));
  return possible.length > 0 ? Math.min(...possible) : asUtcMs - before * 1000;
}

/** A moment without its zone, to the second. */
export function writtenAsUtc(ms: number): string {
  return new Date(ms).toISOString().slice(0, 19);
}

/** Longer than any zone is from UTC, shorter than the time between two changes of its clocks. */
const dayMs = 86_400_000;

// Made once for each zone: one takes longer to make than to ask a hundred times.
const clocks = new Map<string, Intl.DateTimeFormat>();
function clockOf(timeZone: string): Intl.DateTimeFormat {
  const known = clocks.get(timeZone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  clocks.set(timeZone, made);
  return made;
}

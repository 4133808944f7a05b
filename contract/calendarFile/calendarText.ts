import ical, { escape, type ICalEventData, ICalEventStatus } from 'ical-generator';
import { instantOf, wallTimeAt, writtenAsUtc } from '#contract/calendar/wallTime.ts';
import type { Club } from '#contract/records/club.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { zoneName, zoneRules } from './zoneRules.ts';

/** What a calendar says of its club. */
export type CalendarClub = Pick<
  Club,
  'id' | 'name' | 'invented' | 'timeZone' | 'trainingStartsAt' | 'trainingMinutes'
>;

/**
 * Entries as a calendar file (RFC 5545), the same bytes for the same entries. They lie at the club's usual hour, in its time zone with
 * the zone's rules beside them; where the club says no hour each is a whole day, as a meet always is. `of` narrows the calendar's name: to a lifter's, say.
 */
export function calendarText(club: CalendarClub, entries: readonly CalendarEntry[], of = ''): string {
  const name = [club.name, of].filter((part) => part !== '').join(': ');
  const calendar = ical({
    prodId: { company: 'rackwright', product: 'training days', language: 'EN' },
    // The library writes it as it is given.
    name: escape(plain(club.invented ? `${name} (invented)` : name), false),
    // Without a zone of its own: it would turn the moments of changes, which must be in UTC, into local ones.
    timezone: { name: null, generator: () => zoneRules(club.timeZone, ...yearsOf(entries)) },
  });
  for (const entry of entries) calendar.createEvent({ ...about(club, entry), ...lies(club, entry) });
  return calendar.toString();
}

function about(
  club: CalendarClub,
  { id, title, description, sequence, cancelled, changedAt }: CalendarEntry,
) {
  return {
    // Ids come from archives too, and the library writes them as they are.
    id: `${encodeURIComponent(plain(id))}@${encodeURIComponent(plain(club.id))}.rackwright`,
    sequence,
    stamp: changedAt,
    lastModified: changedAt,
    // Not every telephone strikes out what is cancelled.
    summary: plain(cancelled ? `Cancelled: ${title}` : title),
    description: plain(description),
    status: cancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
  };
}

/** When an entry begins and ends. */
function lies(
  { timeZone, trainingStartsAt, trainingMinutes }: CalendarClub,
  { date, wholeDay }: CalendarEntry,
): Pick<ICalEventData, 'start' | 'end' | 'allDay' | 'timezone'> {
  if (wholeDay || trainingStartsAt === null) return { start: `${date}T00:00:00Z`, allDay: true };
  const startMs = instantOf(`${date}T${trainingStartsAt}:00`, timeZone);
  let endMs = startMs + trainingMinutes * minuteMs;
  // In the hour that clocks show twice a reader takes the first: the end is put after it, never before the start.
  while (instantOf(wallTimeAt(endMs, timeZone), timeZone) !== endMs) endMs += minuteMs;
  return {
    start: wallClock(startMs, timeZone),
    end: wallClock(endMs, timeZone),
    timezone: zoneName(timeZone),
  };
}

const minuteMs = 60_000;

/**
 * A moment that the library writes as the clocks of the zone show it; its own dates go by the zone of this machine. Of the objects that
 * it takes this is the least, one that writes itself.
 */
function wallClock(instantMs: number, timeZone: string) {
  const [date, time] = wallTimeAt(instantMs, timeZone).replaceAll(/[-:]/g, '').split('T') as [string, string];
  const clock = {
    format: (pattern?: string) => (pattern === 'YYYYMMDD' ? date : time),
    isValid: () => true,
    toDate: () => new Date(instantMs),
    toJSON: () => writtenAsUtc(instantMs),
    // Asked where the zone is UTC itself.
    utc: () => clock,
  };
  return clock;
}

function yearsOf(entries: readonly CalendarEntry[]): [first: number, last: number] {
  const years = entries.map(({ date }) => Number(date.slice(0, 4)));
  return [Math.min(...years), Math.max(...years)];
}

/** Text as the standard allows it: no control characters but the ends of lines, no half of a character. */
function plain(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\P{Cc}\n\t]/gu, '')
    .replaceAll(/\p{Cs}/gu, '\ufffd');
}

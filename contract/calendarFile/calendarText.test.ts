import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCalendar } from '#contract/tests/readCalendar.ts';
import type { CalendarEntry } from './CalendarEntry.ts';
import { type CalendarClub, calendarText } from './calendarText.ts';
import { zoneName, zoneRules } from './zoneRules.ts';

function club(fields: Partial<CalendarClub> = {}): CalendarClub {
  return {
    id: 'club-1',
    name: 'Quarry Lane',
    invented: false,
    timeZone: 'UTC',
    trainingStartsAt: null,
    trainingMinutes: 120,
    ...fields,
  };
}

function entry(fields: Partial<CalendarEntry> = {}): CalendarEntry {
  return {
    id: 'day-1',
    date: '2026-11-30',
    wholeDay: false,
    title: 'Speed',
    description: '',
    sequence: 3,
    cancelled: false,
    changedAt: '2026-11-29T20:15:07.123Z',
    ...fields,
  };
}

/** The one event of a day at a time in a zone. */
function lying(timeZone: string, date: string, trainingStartsAt: string, trainingMinutes = 60) {
  const text = calendarText(club({ timeZone, trainingStartsAt, trainingMinutes }), [entry({ date })]);
  return readCalendar(text).events[0]!;
}

test('a meet is a whole day, also where training has its hour', () => {
  // RFC 5545, 3.6.1: an event whose start is a DATE lasts that day.
  const text = calendarText(club({ trainingStartsAt: '18:30' }), [entry({ id: 'meet.1', wholeDay: true })]);
  expect(text).toMatch(/DTSTART;VALUE=DATE:20261130/);
  expect(text).toContain('UID:meet.1@club-1.rackwright');
});

describe('a training day lies where the clocks of the club show its hour', () => {
  // Each instant is worked out by hand from the zone's offset from UTC on that date.
  test.each([
    // Directive 2000/84/EC: forward on the last Sunday of March at 01:00 UTC (2026-03-29), back on that of October (2026-10-25).
    ['Europe/Dublin', '2026-03-28', '18:30', '2026-03-28T18:30:00.000Z'],
    ['Europe/Dublin', '2026-03-29', '18:30', '2026-03-29T17:30:00.000Z'],
    ['Europe/Dublin', '2026-10-24', '18:30', '2026-10-24T17:30:00.000Z'],
    ['Europe/Dublin', '2026-10-25', '18:30', '2026-10-25T18:30:00.000Z'],
    // Energy Policy Act of 2005, sec. 110: forward on the second Sunday of March (2026-03-08), back on the first of November (2026-11-01), at 2:00.
    ['America/Los_Angeles', '2026-03-07', '18:30', '2026-03-08T02:30:00.000Z'],
    ['America/Los_Angeles', '2026-03-08', '18:30', '2026-03-09T01:30:00.000Z'],
    ['America/Los_Angeles', '2026-10-31', '18:30', '2026-11-01T01:30:00.000Z'],
    ['America/Los_Angeles', '2026-11-01', '18:30', '2026-11-02T02:30:00.000Z'],
    // Half an hour only: UTC+10:30, in summer UTC+11 (tz database, file australasia); back on 2026-04-05, forward on 2026-10-04.
    ['Australia/Lord_Howe', '2026-04-04', '18:30', '2026-04-04T07:30:00.000Z'],
    ['Australia/Lord_Howe', '2026-04-05', '18:30', '2026-04-05T08:00:00.000Z'],
    ['Australia/Lord_Howe', '2026-10-04', '18:30', '2026-10-04T07:30:00.000Z'],
    // No summer time, the two sides of the date line: UTC+14 and UTC-11 (tz database).
    ['Pacific/Kiritimati', '2026-01-01', '00:30', '2025-12-31T10:30:00.000Z'],
    ['Pacific/Pago_Pago', '2026-12-31', '23:30', '2027-01-01T10:30:00.000Z'],
    // UTC+1, and UTC for the month of fasting: from 2026-02-15 to 2026-03-22 (tz database, file africa; from memory).
    ['Africa/Casablanca', '2026-02-14', '18:30', '2026-02-14T17:30:00.000Z'],
    ['Africa/Casablanca', '2026-03-01', '18:30', '2026-03-01T18:30:00.000Z'],
    ['Africa/Casablanca', '2026-03-22', '18:30', '2026-03-22T17:30:00.000Z'],
    ['Asia/Kathmandu', '2026-06-01', '06:00', '2026-06-01T00:15:00.000Z'],
    ['UTC', '2026-06-01', '06:00', '2026-06-01T06:00:00.000Z'],
  ])('%s, %s at %s', (timeZone, date, at, instant) => {
    const { start, end, wallTime } = lying(timeZone, date, at);
    expect(start).toBe(instant);
    expect(Date.parse(end) - Date.parse(start)).toBe(3_600_000);
    expect(wallTime).toBe(`${date}T${at}:00${timeZone === 'UTC' ? 'Z' : ''}`);
  });

  test('a training that goes over the change of the clocks lasts as long as any other', () => {
    // 2026-03-29 in Dublin: at 01:00 it becomes 02:00; on 2026-10-25 at 02:00 it becomes 01:00.
    expect(lying('Europe/Dublin', '2026-03-29', '00:30', 90)).toMatchObject({
      start: '2026-03-29T00:30:00.000Z',
      end: '2026-03-29T02:00:00.000Z',
    });
    expect(lying('Europe/Dublin', '2026-10-25', '00:30', 180)).toMatchObject({
      start: '2026-10-24T23:30:00.000Z',
      end: '2026-10-25T02:30:00.000Z',
    });
  });

  test('one that would end in the hour that clocks show twice ends after it, never before it began', () => {
    const { start, end, wallTime } = lying('Europe/Dublin', '2026-10-25', '01:30', 60);
    expect(wallTime).toBe('2026-10-25T01:30:00');
    // The standard means the first 01:30 (00:30 UTC), this reader takes the second; the end is after both.
    expect(Date.parse(start)).toBeLessThan(Date.parse(end));
    expect(end).toBe('2026-10-25T02:00:00.000Z');
  });

  // RFC 5545, 3.3.5: a local time that does not occur is interpreted using the UTC offset before the gap.
  test('an hour that the clocks leave out is counted on from before', () => {
    expect(lying('America/Los_Angeles', '2026-03-08', '02:30').start).toBe('2026-03-08T10:30:00.000Z');
  });

  test('every day of a year that goes over the new year, in one file', () => {
    const dates = Array.from({ length: 400 }, (_, i) =>
      new Date(Date.UTC(2025, 11, 1 + i)).toISOString().slice(0, 10),
    );
    const entries = dates.map((date) => entry({ id: date, date }));
    const text = calendarText(club({ timeZone: 'Australia/Lord_Howe', trainingStartsAt: '18:30' }), entries);
    const { events, zones } = readCalendar(text);
    expect(zones).toEqual(['Australia/Lord_Howe']);
    // Summer time until 2026-04-05, 02:00, and from 2026-10-04, 02:00.
    const offsets = events.map(
      ({ start }, i) => (Date.parse(`${dates[i]}T18:30Z`) - Date.parse(start)) / 60_000,
    );
    const expected = dates.map((date) => (date < '2026-04-05' || date >= '2026-10-04' ? 660 : 630));
    expect(offsets).toEqual(expected);
  });

  test('without an hour it is a whole day, whatever the zone, in the week 53 of a year too', () => {
    for (const timeZone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago', 'UTC']) {
      // ISO 8601: 2026 has a week 53, from Monday, 28 December to Sunday, 3 January.
      for (const [date, next] of [
        ['2026-12-28', '2026-12-29'],
        ['2026-12-31', '2027-01-01'],
        ['2027-01-03', '2027-01-04'],
      ] as const) {
        const [event] = readCalendar(calendarText(club({ timeZone }), [entry({ date })])).events;
        expect(event).toMatchObject({ start: date, end: next });
      }
    }
  });
});

test('an offset is told to the second where it is one', () => {
  // Monrovia: UTC-0:44:30 until 1972-01-07, then UTC (tz database, file africa).
  const rules = zoneRules('Africa/Monrovia', 1971, 1972);
  expect(rules).toContain('TZOFFSETFROM:-004430\r\nTZOFFSETTO:+0000');
  expect(rules).toContain('DTSTART:19720107T000000');
});

test('a zone that is only an offset has a name that a parameter can hold', () => {
  // RFC 5545, 3.2: a colon ends a parameter.
  expect(zoneName('+05:45')).toBe('+0545');
});

describe('what is written', () => {
  test('says which record it is of, how often it was changed and when, in UTC', () => {
    const text = calendarText(club({ timeZone: 'America/Los_Angeles', trainingStartsAt: '18:30' }), [
      entry(),
    ]);
    expect(readCalendar(text).events).toMatchObject([
      { uid: 'day-1@club-1.rackwright', sequence: 3, status: 'CONFIRMED', changedAt: '2026-11-29T20:15:07Z' },
    ]);
    // RFC 5545, 3.8.7.2: DTSTAMP must be in UTC.
    expect(text).toContain('\r\nDTSTAMP:20261129T201507Z\r\n');
  });

  test('all that is said of the calendar itself stands before what is in it', () => {
    const text = calendarText(club({ timeZone: 'Europe/Dublin', trainingStartsAt: '18:30' }), [entry()]);
    // RFC 5545, 3.4: properties first, then components.
    const said: string[] = [];
    let depth = 0;
    for (const line of text.trimEnd().split('\r\n')) {
      const [sort] = line.split(':', 1);
      if (depth === 1 && sort !== 'END') said.push(sort === 'BEGIN' ? 'component' : 'property');
      if (sort === 'BEGIN') depth += 1;
      if (sort === 'END') depth -= 1;
    }
    expect(said.indexOf('component')).toBeGreaterThan(said.lastIndexOf('property'));
    expect(said.filter((what) => what === 'component')).toHaveLength(2);
  });

  test('a cancelled day says so, to readers that know only titles too', () => {
    const text = calendarText(club(), [entry({ cancelled: true })]);
    expect(readCalendar(text).events).toMatchObject([{ status: 'CANCELLED', title: 'Cancelled: Speed' }]);
  });

  test('an invented club is named as one, and its name may hold anything', () => {
    const text = calendarText(club({ invented: true, name: 'A, B; C\\D' }), [], 'Ida');
    // RFC 7986, 5.1: a text, escaped as one.
    expect(text).toContain('\r\nNAME:A\\, B\\; C\\\\D: Ida (invented)\r\n');
  });

  test('comma, semicolon, backslash and the end of a line are escaped as the standard wants', () => {
    const title = 'Squat, bench; C:\\new';
    const text = calendarText(club(), [entry({ title, description: 'one\ntwo\r\nthree' })]);
    // RFC 5545, 3.3.11.
    expect(text).toContain('\r\nSUMMARY:Squat\\, bench\\; C:\\\\new\r\n');
    expect(text).toContain('\r\nDESCRIPTION:one\\ntwo\\nthree\r\n');
    expect(readCalendar(text).events).toMatchObject([{ title, description: 'one\ntwo\nthree' }]);
  });

  test('any title and text comes back, and no line is longer than 75 octets or cuts a character', () => {
    const text = fc.string({ unit: fc.constantFrom(...awkward), maxLength: 200 });
    fc.assert(
      fc.property(text, text, (title, description) => {
        const written = calendarText(club(), [entry({ title, description })]);
        const lines = written.split('\r\n');
        for (const line of lines) {
          const octets = Buffer.from(line);
          // RFC 5545, 3.1, without the end of the line.
          expect(octets.length).toBeLessThanOrEqual(75);
          expect(octets.toString()).toBe(line);
          expect(line).not.toMatch(/[\r\n]/);
        }
        expect(readCalendar(written).events).toMatchObject([{ title, description }]);
      }),
    );
  });

  test('what no calendar may hold is left out: control characters, halves of characters', () => {
    const title = 'a\0b\u0007c\ud83cd\u000be';
    expect(readCalendar(calendarText(club(), [entry({ title })])).events).toMatchObject([
      { title: 'abc\ufffdde' },
    ]);
  });

  test('an id that holds anything stays one word that differs from every other', () => {
    const ids = ['a b', 'a\r\nSTATUS:CANCELLED', 'a,b', 'a;b', 'ä'];
    const text = calendarText(
      club(),
      ids.map((id) => entry({ id })),
    );
    const { events } = readCalendar(text);
    expect(events.map(({ status }) => status)).toEqual(ids.map(() => 'CONFIRMED'));
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(ids.length);
    for (const { uid } of events) expect(uid).toMatch(/^[\w.@%!'()*~-]+$/);
  });
});

/** Of one to four octets, joined ones, and all that is escaped. */
const awkward = [
  'a',
  ' ',
  ':',
  ',',
  ';',
  '\\',
  'n',
  'N',
  '"',
  '\n',
  '\t',
  'ü',
  'ß',
  '€',
  '举',
  '\u{1f3cb}\u{1f3fd}\u200d\u2640\ufe0f',
  '\u{1d54f}',
  '\u2028',
];

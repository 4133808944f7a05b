import { expect, test } from 'vitest';
import { dateOfDay } from './dayNumber.ts';
import { isoWeek, isoWeekday, mondayOf } from './isoWeek.ts';

test('weeks and weekdays are those of ISO 8601', () => {
  // ISO 8601:2004, examples of week dates: 1985-W15-5 is 1985-04-12, 1995-W01-7 is 1995-01-08 (from memory).
  expect([isoWeek('1985-04-12'), isoWeekday('1985-04-12')]).toEqual(['1985-W15', 5]);
  expect([isoWeek('1995-01-08'), isoWeekday('1995-01-08')]).toEqual(['1995-W01', 7]);
  // Python 3.11, datetime.date.isocalendar: years of 53 weeks and turns of the year.
  expect(
    ['2026-12-28', '2026-12-31', '2027-01-03', '2027-01-04', '2020-12-31', '2005-01-01'].map(isoWeek),
  ).toEqual(['2026-W53', '2026-W53', '2026-W53', '2027-W01', '2020-W53', '2004-W53']);
});

test('a weekday is the one that the calendar of the browser shows, and its Monday is a Monday', () => {
  const named = new Intl.DateTimeFormat('en', { weekday: 'long', timeZone: 'UTC' });
  for (let day = -1000; day < 30_000; day += 97) {
    const date = dateOfDay(day);
    const names = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
    expect(names[isoWeekday(date) - 1]).toBe(named.format(new Date(`${date}T00:00:00Z`)));
    expect(isoWeekday(mondayOf(date))).toBe(1);
  }
});

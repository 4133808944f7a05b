import { dateOfDay, dayNumber } from './dayNumber.ts';

/** The Monday of the week of a local date, ISO 8601. */
export function mondayOf(date: string): string {
  return dateOfDay(dayNumber(date) - (isoWeekday(date) - 1));
}

/** 1 is Monday, ISO 8601. 1970-01-01 was a Thursday. */
export function isoWeekday(date: string): number {
  return ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;
}

/** The week as ISO 8601 numbers it, "2026-W53": it belongs to the year of its Thursday. */
export function isoWeek(date: string): string {
  const thursday = dateOfDay(dayNumber(mondayOf(date)) + 3);
  const year = thursday.slice(0, 4);
  const week = Math.floor((dayNumber(thursday) - dayNumber(`${year}-01-01`)) / 7) + 1;
  return `${year}-W${String(week).padStart(2, '0')}`;
}

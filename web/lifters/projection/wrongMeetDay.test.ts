import { expect, test } from 'vitest';
import { wrongMeetDay } from './wrongMeetDay.ts';

test('a meet may be today or up to 366 days ahead, and a day beyond either end is refused with both', () => {
  // 2027 has 365 days: 366 after 25 November 2026 is 26 November 2027.
  for (const on of ['2026-11-25', '2027-11-26']) expect(wrongMeetDay(on, '2026-11-25')).toBeNull();
  for (const on of ['2026-11-24', '2027-11-27'])
    expect(wrongMeetDay(on, '2026-11-25')).toMatch(/25 Nov 2026, to 26 Nov 2027\.$/);
});

test('a day that was cleared is asked for, and none is read as a year nought', () => {
  expect(wrongMeetDay('', '2026-11-25')).toBe('Day of the meet is needed.');
});

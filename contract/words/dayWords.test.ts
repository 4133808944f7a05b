import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateText } from './dateText.ts';
import { longDate, monthWord, shortDate, weekdayWord } from './dayWords.ts';

/** Source: Unicode CLDR, locale en-GB, as the platform's ICU carries it. */
function byPlatform(options: Intl.DateTimeFormatOptions, date: string): string {
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' })
    .format(new Date(`${date}T00:00:00Z`))
    .replace(',', '');
}

test('dates are written as British English writes them, in every year that can be kept', () => {
  const days = fc.date({ min: new Date('1900-01-01'), max: new Date('2200-12-31'), noInvalidDate: true });
  fc.assert(
    fc.property(days, (day) => {
      const date = day.toISOString().slice(0, 10);
      const [weekday, month] = [day.getUTCDay() || 7, day.getUTCMonth() + 1];
      const inFull = { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' } as const;
      expect(longDate(date)).toBe(byPlatform(inFull, date));
      expect(shortDate(date)).toBe(byPlatform({ weekday: 'short', day: 'numeric', month: 'short' }, date));
      expect(dateText(date)).toBe(byPlatform({ day: 'numeric', month: 'short', year: 'numeric' }, date));
      expect(weekdayWord(weekday)).toBe(byPlatform({ weekday: 'short' }, date));
      expect(monthWord(month)).toBe(byPlatform({ month: 'short' }, date));
    }),
  );
});

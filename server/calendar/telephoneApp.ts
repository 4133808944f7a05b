import { Hono } from 'hono';
import { etag } from 'hono/etag';
import { secureHeaders } from 'hono/secure-headers';
import type { ClubStore } from '#store/ClubStore.ts';
import type { CalendarKey } from './calendarKey.ts';
import type { ClubCalendar } from './clubCalendar.ts';

/**
 * All that is answered to the local network: calendars, to who knows their addresses. Nothing can be changed here and nothing else be
 * read; whatever is no such address is told that there is nothing, in the same words.
 */
export function telephoneApp(store: ClubStore, calendar: ClubCalendar, key: CalendarKey) {
  return new Hono()
    .onError((error, c) => {
      console.error(error);
      return c.text('The calendar cannot be read now.', 500);
    })
    .notFound((c) => c.text('There is nothing here.', 404))
    .use(
      secureHeaders({
        contentSecurityPolicy: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
        referrerPolicy: 'no-referrer',
        // Plain http within the network: a promise of https would lock telephones out.
        strictTransportSecurity: false,
      }),
    )
    .use(etag())
    .get(`/:part/${calendarFile}`, async (c) => {
      const lifters = await store.list('lifter');
      const whose = key.whose(
        c.req.param('part'),
        lifters.map(({ id }) => id),
      );
      if (whose === undefined) return c.notFound();
      const text = await calendar(lifters.find(({ id }) => id === whose));
      return c.body(text, 200, {
        'Content-Type': 'text/calendar; charset=utf-8',
        // Kept by the telephone alone, which asks each time whether it is still the same.
        'Cache-Control': 'private, no-cache',
      });
    });
}

/** What the path of every calendar ends with. */
export const calendarFile = 'calendar.ics';

import { Hono } from 'hono';
import { z } from 'zod';
import type { CalendarAddresses } from '#contract/calendarFile/calendarAddresses.ts';
import type { ClubCalendar } from '#server/calendar/clubCalendar.ts';
import type { TelephoneDoor } from '#server/calendar/telephoneDoor.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery, readQuery } from '#server/guard/readQuery.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The calendar as a file, and where telephones may read it; `door` null: nowhere. */
export function calendarRoutes(store: ClubStore, calendar: ClubCalendar, door: TelephoneDoor | null) {
  const addresses = async (): Promise<CalendarAddresses> =>
    door ? { at: door.at, addresses: await door.addresses() } : { at: null, addresses: [] };
  return new Hono()
    .get('/calendar.ics', async (c) => {
      const { lifterId } = readQuery(c, query);
      const lifter =
        lifterId === undefined ? undefined : await recordNamed(store, 'lifter', 'lifterId', lifterId);
      return c.body(await calendar(lifter), 200, {
        'Content-Type': 'text/calendar; charset=utf-8',
        'Content-Disposition': 'attachment; filename="calendar.ics"',
      });
    })
    .get('/calendar', noQuery, async (c) => markedJson(c, await addresses()))
    .post('/calendar/renew', noQuery, async (c) => {
      if (!door) throw new Refusal('conflict', '', nowhere);
      await door.renew();
      return c.json(await addresses());
    });
}

const nowhere =
  'The calendar has no addresses to be renewed: the program was not started with --calendar-on.';

const query = z.object({ lifterId: z.string().optional() });

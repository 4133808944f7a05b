import { Hono } from 'hono';
import { localDate } from '#contract/records/kind.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { weeksAhead } from '#server/season/weeksAhead.ts';
import { asShaped } from '#store/asShaped.ts';

/** What is known today of the weeks ahead of one lifter of a season. */
export function nearDayRoutes({ day, ahead }: ReturnType<typeof weeksAhead>) {
  return new Hono()
    .get('/seasons/:id/lifters/:lifterId/ahead', noQuery, async (c) => {
      const { id, lifterId } = c.req.param();
      return markedJson(c, await ahead(id, lifterId, c.req.raw.signal));
    })
    .get('/seasons/:id/lifters/:lifterId/days/:date', noQuery, async (c) => {
      const { id, lifterId, date } = c.req.param();
      const asked = { seasonId: id, lifterId, date: asShaped(localDate, date) };
      return markedJson(c, await day(asked, c.req.raw.signal));
    });
}

import { Hono } from 'hono';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { nearWeeks } from '#server/season/nearWeeks.ts';
import { refuseNoMonday } from '#server/season/refuseNoMonday.ts';

/** What is known today of the weeks ahead of one lifter of a season. */
export function nearWeekRoutes({ week, ahead }: ReturnType<typeof nearWeeks>) {
  return new Hono()
    .get('/seasons/:id/lifters/:lifterId/ahead', noQuery, async (c) => {
      const { id, lifterId } = c.req.param();
      return markedJson(c, await ahead(id, lifterId, c.req.raw.signal));
    })
    .get('/seasons/:id/lifters/:lifterId/weeks/:monday', noQuery, async (c) => {
      const { id, lifterId, monday } = c.req.param();
      refuseNoMonday(monday);
      return markedJson(c, await week({ seasonId: id, lifterId, monday }, c.req.raw.signal));
    });
}

import { Hono } from 'hono';
import { entriesOf, moreLifters, newSeason, recordsOfNewSeason } from '#contract/season/newSeason.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newId } from '#store/newId.ts';

/** A season with its method, its meets and its lifters, or more lifters for one: all of it by one change, or nothing. */
export function newSeasonRoutes(store: ClubStore) {
  return new Hono()
    .post('/seasons', noQuery, async (c) => {
      const asked = asShaped(newSeason, await readJson(c));
      const { records: club } = await store.records();
      const { seasonId, records } = recordsOfNewSeason(asked, club, newId);
      const { seq } = await store.putTogether(records);
      return c.json({ seasonId, seq }, 201);
    })
    .post('/seasons/:id/lifters', noQuery, async (c) => {
      const asked = asShaped(moreLifters, await readJson(c));
      const { seq } = await store.putTogether(entriesOf(c.req.param('id'), asked, newId));
      return c.json({ seq }, 201);
    });
}

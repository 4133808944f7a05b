import { Hono } from 'hono';
import { z } from 'zod';
import { writeCsv } from '#contract/csv/writeCsv.ts';
import { errorBody } from '#server/guard/errors.ts';
import { kindOf } from '#server/guard/kindOf.ts';
import { noQuery, readQuery, wishInQuery } from '#server/guard/readQuery.ts';
import { readText } from '#server/guard/readText.ts';
import type { TakeIn } from '#server/jobs/behindWrites.ts';
import { doorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Records of one kind as a spreadsheet file, out and in. A file with any wrong line is refused whole. */
export function csvRoutes(store: ClubStore, run: RunWork, takeIn: TakeIn) {
  return new Hono()
    .get('/records/:kind/csv', noQuery, async (c) => {
      const kind = kindOf(c.req.param('kind'));
      const csv = writeCsv(kind, await store.list(kind));
      return c.body(csv, 200, {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Disposition': `attachment; filename="${kind}.csv"`,
      });
    })
    .post('/records/:kind/csv', async (c) => {
      const kind = kindOf(c.req.param('kind'));
      const { dryRun } = readQuery(c, query);
      const text = await readText(c, 'text/csv');
      const taken = await takeIn(() =>
        run('importRecords', { door: doorOf(store), asked: { kind, text, dryRun } }),
      );
      if ('problems' in taken) {
        const [first] = taken.problems;
        const field = first.column === '' ? `line ${first.line}` : `line ${first.line}, ${first.column}`;
        return c.json({ ...errorBody(field, first.message), ...taken }, 400);
      }
      store.tellOf(taken.seq);
      return c.json(taken);
    });
}

const query = z.object({ dryRun: wishInQuery });

import { Hono } from 'hono';
import { z } from 'zod';
import { MOST_TOLD } from '#contract/csv/CsvProblem.ts';
import { readCsv } from '#contract/csv/readCsv.ts';
import { writeCsv } from '#contract/csv/writeCsv.ts';
import { errorBody } from '#server/guard/errors.ts';
import { kindOf } from '#server/guard/kindOf.ts';
import { noQuery, readQuery, wishInQuery } from '#server/guard/readQuery.ts';
import { readText } from '#server/guard/readText.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newId } from '#store/newId.ts';

/** Records of one kind as a spreadsheet file, out and in. A file with any wrong line is refused whole. */
export function csvRoutes(store: ClubStore) {
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
      const club = await store.records();
      const making = { newId, today: await store.today() };
      const { records, added, changed, problems, questions } = readCsv(kind, text, club.records, making);
      const [first] = problems;
      if (first) {
        const field = first.column === '' ? `line ${first.line}` : `line ${first.line}, ${first.column}`;
        const told = { problems: problems.slice(0, MOST_TOLD), problemCount: problems.length };
        return c.json({ ...errorBody(field, first.message), ...told }, 400);
      }
      const rows = records.length;
      const counts = { rows, added, changed, unchanged: rows - added - changed };
      // A file that says only what is there makes no change that one could undo.
      const { seq } = dryRun || added + changed === 0 ? club : await store.putAll(kind, records);
      if (questions.length === 0) return c.json({ ...counts, dryRun, seq });
      const told = { questions: questions.slice(0, MOST_TOLD), questionCount: questions.length };
      return c.json({ ...counts, dryRun, seq, ...told });
    });
}

const query = z.object({ dryRun: wishInQuery });

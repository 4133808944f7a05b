import { Hono } from 'hono';
import { z } from 'zod';
import { slipTakings } from '#contract/log/slipAsked.ts';
import { writeLog } from '#contract/log/writeLog.ts';
import { shapeProblem } from '#contract/words/shapeProblem.ts';
import { errorBody } from '#server/guard/errors.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { setsAskedFor } from '#server/guard/setsAskedFor.ts';
import { doorOf } from '#server/jobs/clubDoor.ts';
import type { ImportAsked } from '#server/jobs/importLog.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The log as a spreadsheet file, out and in. A file with any wrong line is refused whole; a set is never taken twice. */
export function logFileRoutes(store: ClubStore, run: RunWork) {
  return new Hono()
    .get('/sets/csv', async (c) => {
      const asked = await setsAskedFor(c, store);
      const [sets, { records }] = await Promise.all([store.loggedSets(asked), store.records()]);
      return c.body(writeLog(sets, records, await store.formerGear(sets)), 200, {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Disposition': 'attachment; filename="log.csv"',
      });
    })
    .post('/sets/import', noQuery, async (c) => {
      const found = await run('importLog', { door: doorOf(store), asked: askedOf(await readJson(c)) });
      const [first] = found.problems;
      if (!first || found.dryRun) return c.json(found);
      const field = first.column === '' ? `line ${first.line}` : `line ${first.line}, ${first.column}`;
      const { seq: _, ...rest } = found;
      return c.json({ ...errorBody(field, first.message), ...rest }, 400);
    });
}

function askedOf({ text, columns = null, slips = {}, dryRun = false, ...rest }: Given): ImportAsked {
  const [other] = Object.keys(rest);
  if (other !== undefined)
    throw new Refusal(
      'invalid',
      other,
      `${other} is not a field that is known here; the body is {"text": "...", "columns": {...}, "slips": {...}, "dryRun": true}.`,
    );
  if (typeof text !== 'string')
    throw new Refusal('invalid', 'text', `text is ${said(text)}; it must be the content of the file.`);
  if (typeof dryRun !== 'boolean')
    throw new Refusal('invalid', 'dryRun', `dryRun is ${said(dryRun)}; it must be true or false.`);
  if (typeof columns !== 'object' || Array.isArray(columns)) {
    throw new Refusal(
      'invalid',
      'columns',
      `columns is ${said(columns)}; it must be an object with a header of the file for each column, or null.`,
    );
  }
  const read = slipsShape.safeParse(slips);
  if (!read.success) {
    const { field, message } = shapeProblem(read.error, slips);
    const path = field === '' ? 'slips' : `slips.${field}`;
    throw new Refusal('invalid', path, `In slips: ${message}`);
  }
  return { text, columns: columns as Given | null, slips: read.data, dryRun };
}

const slipsShape = z.record(z.string(), z.enum(slipTakings));

function said(value: unknown): string {
  return JSON.stringify(value) ?? 'missing';
}

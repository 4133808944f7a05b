import { Hono } from 'hono';
import { z } from 'zod';
import { slipTakings } from '#contract/log/slipAsked.ts';
import { shapeProblem } from '#contract/words/shapeProblem.ts';
import { spelt } from '#contract/words/spelt.ts';
import { errorBody } from '#server/guard/errors.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { narrowing, setsAskedFor } from '#server/guard/setsAskedFor.ts';
import type { TakeIn } from '#server/jobs/behindWrites.ts';
import { doorOf, readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { ImportAsked } from '#server/jobs/importLog.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { sentFile } from './sentFile.ts';
import { whereReadable } from './whereReadable.ts';

/** The log as a spreadsheet file, out and in. A file with any wrong line is refused whole; a set is never taken twice. */
export function logFileRoutes(store: ClubStore, run: RunWork, takeIn: TakeIn) {
  return new Hono()
    .get('/sets/csv', async (c) => {
      const { filter } = await setsAskedFor(c, store, narrowing);
      const { body, bytes } = await sentFile((path) =>
        whereReadable(store, run)('writeLog', { door: readingDoorOf(store), filter, path }),
      );
      return c.body(body, 200, {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Length': String(bytes),
        'Content-Disposition': 'attachment; filename="log.csv"',
      });
    })
    .post('/sets/import', noQuery, async (c) => {
      const asked = askedOf(await readJson(c));
      const found = await takeIn(() => run('importLog', { door: doorOf(store), asked }));
      store.tellOf(found.seq);
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
  return {
    text,
    columns: columns === null ? null : texts('columns', z.string(), columns),
    slips: texts('slips', z.enum(slipTakings), slips),
    dryRun,
  };
}

/** A field of the body that holds texts by their names. */
function texts<Text extends z.ZodType<string>>(field: string, text: Text, given: unknown) {
  const read = z.record(z.string(), text).safeParse(given);
  if (read.success) return read.data;
  const problem = shapeProblem(read.error, given);
  if (problem.field === '')
    throw new Refusal('invalid', field, `${field} is ${said(given)}; it must be ${whatTexts[field]}.`);
  throw new Refusal('invalid', `${field}.${problem.field}`, `In ${field}: ${problem.message}`);
}

const whatTexts: Record<string, string> = {
  columns: 'an object with a header of the file for each column, or null',
  slips: 'an object with what is to be done for each slip',
};

function said(value: unknown): string {
  return value === undefined ? 'missing' : spelt(value);
}

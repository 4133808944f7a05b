import { Hono } from 'hono';
import { againstLog } from '#contract/log/againstLog.ts';
import { readLog } from '#contract/log/readLog.ts';
import { writeLog } from '#contract/log/writeLog.ts';
import { errorBody } from '#server/guard/errors.ts';
import { readJson } from '#server/guard/readJson.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The log as a spreadsheet file, out and in. A file with any wrong line is refused whole; a set is never taken twice. */
export function logFileRoutes(store: ClubStore) {
  return new Hono()
    .get('/sets/csv', async (c) => {
      const [sets, { records }] = await Promise.all([store.loggedSets(), store.records()]);
      return c.body(writeLog(sets, records, await store.formerGear(sets)), 200, {
        'Content-Type': 'text/csv; charset=utf-8',
        'Content-Disposition': 'attachment; filename="log.csv"',
      });
    })
    .post('/sets/import', async (c) => {
      const { text, columns, dryRun } = askedOf(await readJson(c));
      const { records, seq } = await store.records();
      const { sets, problems, ...file } = readLog(text, columns, records);
      const dates = sets.map(({ doneOn }) => doneOn).toSorted();
      const [firstOn = null, lastOn = null] = [dates[0], dates.at(-1)];
      const log =
        firstOn === null || lastOn === null ? [] : await store.loggedSets({ from: firstOn, to: lastOn });
      const { fresh, alreadyThere } = againstLog(sets, log);
      const ids = new Set(sets.map(({ lifterId }) => lifterId));
      const lifters = records.lifter.filter(({ id }) => ids.has(id)).map(({ name }) => name);
      const found = {
        ...file,
        added: fresh.length,
        alreadyThere,
        problems: problems.slice(0, shownProblems),
        problemCount: problems.length,
        firstOn,
        lastOn,
        lifters,
        dryRun,
      };
      const [first] = problems;
      if (first && !dryRun) {
        const field = first.column === '' ? `line ${first.line}` : `line ${first.line}, ${first.column}`;
        return c.json({ ...errorBody(field, first.message), ...found }, 400);
      }
      const takes = !dryRun && fresh.length > 0;
      return c.json({ ...found, seq: takes ? (await store.logSets(fresh)).seq : seq });
    });
}

/** More than anybody mends before looking again. */
const shownProblems = 50;

interface Asked {
  text: string;
  columns: Given | null;
  dryRun: boolean;
}

function askedOf({ text, columns = null, dryRun = false }: Given): Asked {
  if (typeof text !== 'string') throw new Refusal('invalid', 'text', 'text must be the content of the file.');
  if (typeof dryRun !== 'boolean') throw new Refusal('invalid', 'dryRun', 'dryRun must be true or false.');
  if (typeof columns !== 'object' || Array.isArray(columns)) {
    throw new Refusal(
      'invalid',
      'columns',
      'columns must name a header of the file for each column, or be null.',
    );
  }
  return { text, columns: columns as Given | null, dryRun };
}

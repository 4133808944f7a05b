import { dirname, join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { Refusal } from '../Refusal.ts';
import { doings } from '../tests/doings.ts';
import { newClubPath } from '../tests/newClubPath.ts';
import { openClub } from '../tests/openClub.ts';
import { smallClub } from '../tests/smallClub.ts';
import { squatSet } from '../tests/squatSet.ts';
import { catchUp } from './catchUp.ts';
import { copyClub } from './copyClub.ts';

/** Every row of every table, in an order that does not depend on when it was written. */
function rowsOf(path: string): Record<string, string[]> {
  const file = new SqliteFile(path, { readonly: true });
  try {
    expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(file.pragma('foreign_key_check')).toEqual([]);
    const tables = file.prepare(`select name from sqlite_master where type = 'table'`).pluck().all();
    const rows = (name: string) => file.prepare(`select * from "${name}"`).all();
    return Object.fromEntries(
      (tables as string[]).map((name) => [
        name,
        rows(name)
          .map((row) => JSON.stringify(row))
          .sort(),
      ]),
    );
  } finally {
    file.close();
  }
}

test('a copy that was brought up to the club holds row for row what the club does, whatever was done since', async () => {
  const step = fc.record({ does: fc.constantFrom(...Object.keys(doings)), n: fc.nat({ max: 1000 }) });
  const steps = fc.array(step, { minLength: 1, maxLength: 12 });
  await fc.assert(
    fc.asyncProperty(steps, steps, async (before, since) => {
      const path = newClubPath();
      const copy = join(dirname(path), 'copy.sqlite');
      const store = await openClub(path);
      const doAll = async (some: typeof before) => {
        for (const { does, n } of some)
          await doings[does]!(store, n).catch((error: unknown) => expect(error).toBeInstanceOf(Refusal));
      };
      try {
        await store.importRecords(smallClub());
        await store.logSets([squatSet(), squatSet(), squatSet()]);
        await doAll(before);
        copyClub(path, copy);
        await doAll(since);
        catchUp(copy, path);
        expect(rowsOf(copy)).toEqual(rowsOf(path));
      } finally {
        await store.close();
      }
    }),
    { numRuns: 25 },
  );
});

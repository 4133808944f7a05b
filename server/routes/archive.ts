import { Hono } from 'hono';
import { z } from 'zod';
import { errorBody } from '#server/guard/errors.ts';
import { noQuery, readQuery, wishInQuery } from '#server/guard/readQuery.ts';
import { withBodyInFile } from '#server/guard/withBodyInFile.ts';
import type { TakeIn } from '#server/jobs/behindWrites.ts';
import { doorOf, readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { sentFile } from './sentFile.ts';
import { whereReadable } from './whereReadable.ts';

/** The whole club as one file, out and in; a dry run says what a file holds, what is here now, and what is wrong in the file. */
export function archiveRoutes(store: ClubStore, run: RunWork, takeIn: TakeIn) {
  return new Hono()
    .get('/archive', noQuery, async (c) => {
      const { body, bytes } = await sentFile((path) =>
        whereReadable(store, run)('writeArchive', { door: readingDoorOf(store), path }),
      );
      return c.body(body, 200, {
        'Content-Type': 'application/json; charset=utf-8',
        'Content-Length': String(bytes),
        'Content-Disposition': `attachment; filename="${await archiveName(store)}"`,
      });
    })
    .post('/archive', async (c) => {
      const { dryRun, replace } = readQuery(c, query);
      if (!dryRun && !replace) {
        const message =
          'An archive takes the place of the whole club; ask for that with ?replace=1, or look at it first with ?dryRun=1.';
        throw new Refusal('invalid', 'replace', message);
      }
      return withBodyInFile(c, 'application/json', async (path) => {
        const door = doorOf(store);
        if (!dryRun) {
          const restored = await takeIn(() => run('restoreArchive', { door, path }));
          store.tellOf(restored.seq);
          return c.json(restored);
        }
        const tried = await run('tryArchive', { door, path });
        if ('archive' in tried) return c.json({ dryRun: true, ...tried });
        const [first] = tried.problems;
        return c.json({ ...errorBody(first.field, first.message), problems: tried.problems }, 400);
      });
    });
}

/** Says whose club it is and of which day: `millrace-barbell-club-2026-11-25.json`. */
async function archiveName(store: ClubStore): Promise<string> {
  const [club] = await store.list('club');
  const words = (club?.name ?? '')
    .normalize('NFKD')
    .toLowerCase()
    .match(/[a-z0-9]+/g) ?? ['club'];
  return `${words.join('-')}-${await store.today()}.json`;
}

const query = z.object({ dryRun: wishInQuery, replace: wishInQuery });

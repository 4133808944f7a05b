import { Hono } from 'hono';
import { lookAt } from '#contract/archive/archiveLook.ts';
import { type ArchiveProblem, readArchive } from '#contract/archive/readArchive.ts';
import { errorBody } from '#server/guard/errors.ts';
import { noQuery, readQuery, wishInQuery } from '#server/guard/readQuery.ts';
import { readText } from '#server/guard/readText.ts';
import { openOneClub } from '#server/oneClub.ts';
import { exportArchive, restoreArchive } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The whole club as one file, out and in; a dry run says what a file holds, what is here now, and what is wrong in the file. */
export function archiveRoutes(store: ClubStore) {
  return new Hono()
    .get('/archive', noQuery, async (c) =>
      c.body(await exportArchive(store), 200, {
        'Content-Type': 'application/json; charset=utf-8',
        'Content-Disposition': `attachment; filename="${await archiveName(store)}"`,
      }),
    )
    .post('/archive', async (c) => {
      const { dryRun, replace } = readQuery(c, { dryRun: wishInQuery, replace: wishInQuery });
      if (!dryRun && !replace) {
        const message =
          'An archive takes the place of the whole club; ask for that with ?replace=1, or look at it first with ?dryRun=1.';
        throw new Refusal('invalid', 'replace', message);
      }
      const text = await readText(c, 'application/json');
      if (!dryRun) return c.json(await restoreArchive(store, text));
      const tried = await tryArchive(store, text);
      if ('look' in tried) {
        return c.json({ dryRun: true, archive: tried.look, here: lookAt(await store.snapshot()) });
      }
      const [first] = tried.problems;
      return c.json({ ...errorBody(first.field, first.message), problems: tried.problems }, 400);
    });
}

/** Takes the archive into a club in memory, so that everything is asked of it that would be asked of it here. */
async function tryArchive(store: ClubStore, text: string) {
  const read = readArchive(text);
  if ('problems' in read) return read;
  const { records, ...rest } = read.content;
  const trial = await openOneClub(':memory:', store.who);
  try {
    await trial.importRecords(records, rest);
    return { look: lookAt(read.content) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { field, message } = error;
    // What does not fit together stands on no one line.
    const problem: Omit<ArchiveProblem, 'line'> & { line: null } = { field, message, line: null };
    return { problems: [problem] as const };
  } finally {
    await trial.close();
  }
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

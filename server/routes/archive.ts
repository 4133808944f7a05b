import { Hono } from 'hono';
import { readText } from '#server/guard/readText.ts';
import { exportArchive, restoreArchive } from '#store/archive.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The whole club as one file, out and in. */
export function archiveRoutes(store: ClubStore) {
  return new Hono()
    .get('/archive', async (c) =>
      c.body(await exportArchive(store), 200, {
        'Content-Type': 'application/json; charset=utf-8',
        'Content-Disposition': `attachment; filename="${await archiveName(store)}"`,
      }),
    )
    .post('/archive', async (c) => {
      if (c.req.query('replace') !== '1') {
        const message = 'An archive takes the place of the whole club; ask for that with ?replace=1.';
        throw new Refusal('invalid', 'replace', message);
      }
      return c.json(await restoreArchive(store, await readText(c, 'application/json')));
    });
}

/** Says whose club it is and of which day: `millrace-barbell-club-2026-11-25.json`. */
async function archiveName(store: ClubStore): Promise<string> {
  const [club] = await store.list('club');
  const words = (club?.name ?? '')
    .normalize('NFKD')
    .toLowerCase()
    .match(/[a-z0-9]+/g) ?? ['club'];
  return `${words.join('-')}-${new Date().toISOString().slice(0, 10)}.json`;
}

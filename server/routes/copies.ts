import { rm } from 'node:fs/promises';
import { Hono } from 'hono';
import type { KeptCopies, KeptCopy } from '#contract/archive/keptCopy.ts';
import type { SnapshotKeeper } from '#server/copies/snapshotKeeper.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { TakeIn } from '#server/jobs/behindWrites.ts';
import { doorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type CopyFile, copyNamed, keptCopies } from '#store/copies/keptCopies.ts';
import { sentFile } from './sentFile.ts';

/** Copies of the whole club that are kept beside it: listed, looked into, downloaded, put in the club's place, removed. */
export function copyRoutes(store: ClubStore, run: RunWork, takeIn: TakeIn, keeper: SnapshotKeeper) {
  const named = (name: string) => copyNamed(store.path, keeper.folder, name);
  const asked = async (name: string) => ({ door: doorOf(store), copy: await named(name) });
  return new Hono()
    .get('/copies', noQuery, async (c) => {
      const copies = (await keptCopies(store.path, keeper.folder)).map(told);
      const { folder } = keeper;
      return markedJson(c, { copies, folder, fault: keeper.fault() } satisfies KeptCopies);
    })
    .post('/copies', noQuery, async (c) => c.json(told(await keeper.take()), 201))
    .get('/copies/:name', noQuery, async (c) => {
      const ofCopy = await asked(c.req.param('name'));
      const { name } = ofCopy.copy;
      const { body, bytes } = await sentFile((path) => run('writeCopy', { ...ofCopy, path }));
      return c.body(body, 200, {
        'Content-Type': 'application/json; charset=utf-8',
        'Content-Length': String(bytes),
        'Content-Disposition': `attachment; filename="${name.replace(/[^\w.-]/g, '_').replace(/\.sqlite$/, '.json')}"`,
      });
    })
    .get('/copies/:name/look', noQuery, async (c) =>
      c.json(await run('lookIntoCopy', await asked(c.req.param('name')))),
    )
    .post('/copies/:name/restore', noQuery, async (c) => {
      const ofCopy = await asked(c.req.param('name'));
      const restored = await takeIn(() => run('restoreCopy', ofCopy));
      store.tellOf(restored.seq);
      return c.json(restored);
    })
    .delete('/copies/:name', noQuery, async (c) => {
      const { path } = await named(c.req.param('name'));
      await rm(path, { force: true });
      return c.body(null, 204);
    });
}

function told({ name, kind, takenAt, bytes }: CopyFile): KeptCopy {
  return { name, kind, takenAt, bytes };
}

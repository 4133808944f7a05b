import { createMiddleware } from 'hono/factory';
import type { ClubStore } from '#store/ClubStore.ts';

/** Every answer that reads the club says up to which change at least all is in it, in the header `Club-Change`. */
export function standing(store: Pick<ClubStore, 'latestSeq'>) {
  return createMiddleware(async (c, next) => {
    // Asked before anything is read, so that no change is promised that the answer missed.
    if (c.req.method === 'GET') c.header('Club-Change', String(await store.latestSeq()));
    await next();
  });
}

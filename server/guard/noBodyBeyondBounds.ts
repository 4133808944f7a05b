import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import { errorBody } from './errors.ts';

/** Refuses a body that would fill the memory, or the disk. Where a whole file may come the limit is that of files, elsewhere that of what is typed. */
export const noBodyBeyondBounds = createMiddleware((c, next) =>
  c.req.method === 'GET' ? next() : limitAt(c.req.path)(c, next),
);

function limitAt(path: string) {
  if (path === '/api/archive') return ofArchives;
  return takesTable.test(path) ? ofTables : ofForms;
}

const takesTable = /^\/api\/(sets\/import|records\/[^/]*\/csv)$/;

/** An archive of a million sets has half a gigabyte and is never held as a whole; a table is. A season of sets, typed or calculated with, fits into 16 MB. */
const [ofArchives, ofTables, ofForms] = [4096, 256, 16].map((mostMb) => {
  const maxSize = mostMb * 1024 * 1024;
  const onError = (c: Context) =>
    c.json(errorBody('', `The body is larger than ${mostMb} MB, more than this address takes.`), 413);
  const counted = bodyLimit({ maxSize, onError });
  return createMiddleware(async (c, next) => {
    const announced = c.req.header('content-length');
    // One that comes piece by piece is counted as it comes. To look at the stream of any other would only slow the answer.
    if (announced === undefined || c.req.header('transfer-encoding') !== undefined) return counted(c, next);
    return Number(announced) > maxSize ? onError(c) : next();
  });
}) as [BodyLimit, BodyLimit, BodyLimit];

type BodyLimit = ReturnType<typeof bodyLimit>;

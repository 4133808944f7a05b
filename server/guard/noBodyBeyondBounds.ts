import type { Context } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import { errorBody } from './errors.ts';

/** Refuses a body that would fill the memory. Where a whole file may come the limit is that of files, elsewhere that of what is typed. */
export const noBodyBeyondBounds = createMiddleware((c, next) =>
  c.req.method === 'GET' ? next() : (takesFile.test(c.req.path) ? ofFiles : ofForms)(c, next),
);

const takesFile = /^\/api\/(archive|sets\/import|records\/[^/]*\/csv)$/;

/** An archive of half a million sets fits into 256 MB; a season of sets, typed or calculated with, into 16. */
const [ofFiles, ofForms] = [256, 16].map((mostMb) =>
  bodyLimit({
    maxSize: mostMb * 1024 * 1024,
    onError: (c: Context) =>
      c.json(errorBody('', `The body is larger than ${mostMb} MB, more than this address takes.`), 413),
  }),
) as [ReturnType<typeof bodyLimit>, ReturnType<typeof bodyLimit>];

import { etag } from 'hono/etag';
import { createMiddleware } from 'hono/factory';

/** An answer that the reader has already, by its mark, is not sent again. The line of news has no end that could be marked. */
export const unchanged = createMiddleware((c, next) =>
  c.req.method !== 'GET' || c.req.path === '/api/events' ? next() : marked(c, next),
);

const marked = etag();

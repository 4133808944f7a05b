import { etag } from 'hono/etag';
import { createMiddleware } from 'hono/factory';

/** An answer that the reader has already, by its mark, is not sent again. */
export const unchanged = createMiddleware((c, next) =>
  c.req.method !== 'GET' || isUnmarked(c.req.path) ? next() : marked(c, next),
);

/**
 * The line of news has no end that could be marked, and an archive, one of a copy too, or the table of the log would have to be held in
 * memory for it. Nobody asks twice what was done since the same change.
 */
function isUnmarked(path: string): boolean {
  return unmarked.has(path) || /^\/api\/copies\/[^/]+$/.test(path);
}

const unmarked: ReadonlySet<string> = new Set([
  '/api/events',
  '/api/archive',
  '/api/sets/csv',
  '/api/club/changes',
]);

const marked = etag();

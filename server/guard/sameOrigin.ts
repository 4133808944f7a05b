import { createMiddleware } from 'hono/factory';
import { errorBody } from './errors.ts';

/**
 * Lets in only pages that this server itself gave out. The server listens on this machine alone, but any web page open
 * here could try to reach it: by a name that was pointed at 127.0.0.1 (the Host header gives it away) or from its own
 * address (the Origin or Sec-Fetch-Site header does).
 */
export const sameOrigin = createMiddleware(async (c, next) => {
  const host = c.req.header('host') ?? new URL(c.req.url).host;
  if (!localNames.has(host.replace(/:\d+$/, ''))) {
    return c.json(errorBody('Host', 'This server answers only to its address on this machine.'), 403);
  }
  const origin = c.req.header('origin');
  const site = c.req.header('sec-fetch-site');
  const foreign =
    (origin !== undefined && origin !== `http://${host}`) || site === 'cross-site' || site === 'same-site';
  // A link on another page may open ours; it may neither read the club nor change it.
  if (foreign && (c.req.method !== 'GET' || c.req.path.startsWith('/api/'))) {
    return c.json(errorBody('Origin', 'Pages of other origins have no access to the club.'), 403);
  }
  return next();
});

const localNames = new Set(['127.0.0.1', 'localhost', '[::1]']);

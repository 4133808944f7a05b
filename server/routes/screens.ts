import { serveStatic } from '@hono/node-server/serve-static';
import { Hono } from 'hono';

/** The built screens: files with a hash in their name are kept by the browser for a year, the page is asked for each time. */
export function screenRoutes(webRoot: string) {
  const files = { root: webRoot, precompressed: true };
  return (
    new Hono()
      .use(async (c, next) => {
        await next();
        if (!c.res.ok) return;
        const hashed = c.req.path.startsWith('/assets/');
        c.header('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      })
      .use('/day/:id{[^./]+}', async (c, next) => {
        // Its loads are on their way before any script of the page is read; usePrescription takes this answer.
        const id = c.req.param('id');
        const path = `/api/days/${encodeURIComponent(id)}/prescription`;
        await next();
        if (c.res.ok && id !== 'new') c.header('Link', `<${path}>; rel=preload; as=fetch; crossorigin`);
      })
      .use(serveStatic(files))
      // Places within the app (/day/...) have no dot; a missing file has, and stays missing.
      .get('/:place{[^.]*}', serveStatic({ ...files, path: 'index.html' }))
  );
}
